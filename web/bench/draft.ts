import canonicalize from 'canonicalize';
import type { Overlay } from '../../src/core/rules/overlay/parse-overlay.ts';
import type { OverlayContent } from '../../src/core/rules/overlay/schema.ts';
import type { Pack, Question } from '../../src/core/rules/pack-types.ts';
import type { Parameter } from '../../src/core/units/parameter.ts';
import { inLanguage, type Source, sourceIn } from '../../src/core/units/texts.ts';
import type { Memory } from '../chat/memory.ts';
import type { Bench } from './server.ts';
import { sharedAnswers } from './shared-answers.ts';

/** What is said of an overlay as a whole. */
export interface DraftHead {
  readonly id: string;
  readonly title: string;
  readonly author: string;
  readonly place: string;
  readonly reason: string;
  readonly layer: 'area' | 'farm';
  /** YYYY-MM-DD. */
  readonly validFrom: string;
}

/** An overlay that is being written, as it is kept on the device. */
export interface Draft {
  readonly head: DraftHead;
  /** New values by parameter. */
  readonly limits: Readonly<Record<string, Parameter['value']>>;
  /** What was typed of a value and cannot be read as one yet, by parameter. */
  readonly typed: Readonly<Record<string, string>>;
  /** True where answers that lie on both sides of a new limit are shared out between two. Absent in what was kept before there was this. */
  readonly sharesOut?: boolean;
  /** The overlay that it goes on with; null for a new one. */
  readonly opened: OverlayContent | null;
  /** Hash of the overlay in the server's folder that it takes the place of. */
  readonly replaces: string | null;
}

const draftKey = 'loamward.bench';

/** Nothing changed yet; the overlay begins on the day given. */
export function emptyDraft(today: string): Draft {
  const head = { id: '', title: '', author: '', place: '', reason: '', layer: 'farm', validFrom: today } as const;
  return { head, limits: {}, typed: {}, opened: null, replaces: null };
}

/** Goes on with an overlay; `replaces` is its hash where it lies in the server's folder. */
export function openDraft({ content }: Overlay, pack: Pack, language: string, replaces: string | null): Draft {
  const { id, title, author, place, reason, layer, validFrom } = content.overlay;
  const known = new Set(pack.parameters.map((one) => one.id));
  const own = (content.parameters ?? []).filter((one) => known.has(one.id) && one.validFrom === undefined);
  const limits = Object.fromEntries(own.map((one) => [one.id, one.value as Parameter['value']]));
  const { opened, sharesOut } = withoutShared(content, limits, pack);
  return {
    head: {
      id,
      title: inLanguage(title, language),
      author,
      place,
      reason: sourceIn(reason, language),
      layer,
      validFrom,
    },
    limits,
    typed: {},
    ...(sharesOut ? { sharesOut } : {}),
    opened,
    replaces,
  };
}

/** What was opened without the questions that the bench shares out by itself where these limits hold: they then follow the limits. */
function withoutShared(content: OverlayContent, limits: Draft['limits'], pack: Pack) {
  const { questions = [], ...others } = content;
  const made = new Map(
    sharedAnswers(pack, { limits, opened: null }).map(({ question }) => [question.id, canonicalize(question)]),
  );
  const own = questions.filter((one) => made.get(one.id) !== canonicalize(one));
  const opened = own.length === 0 ? others : { ...others, questions: own };
  return { opened, sharesOut: own.length < questions.length };
}

/**
 * The file of an overlay as the draft stands: what it was opened with stays, but for the head, the limits changed here and the
 * questions given.
 */
export function contentOf(
  { head, limits, opened }: Draft,
  pack: Pack,
  language: string,
  shared: readonly Question[] = [],
): object {
  const texts = (text: string) => Object.fromEntries(pack.languages.map((code) => [code, text]));
  const { title, reason, ...rest } = head;
  const before = opened?.overlay;
  const keep = (was: Source | undefined, is: string) =>
    was !== undefined && sourceIn(was, language) === is ? was : null;
  const {
    parameters: written = [],
    questions: asked = [],
    overlay: _head,
    hash: _hash,
    ...others
  } = opened ?? ({} as Partial<OverlayContent>);
  const entry = (id: string) => written.find((one) => one.id === id && one.validFrom === undefined);
  const known = new Set(pack.parameters.map((one) => one.id));
  const kept = written.filter((one) => one.validFrom !== undefined || !known.has(one.id));
  const changed = Object.entries(limits).map(([id, value]) => {
    const was = entry(id) ?? { id, source: reason, why: texts(reason) };
    return { ...was, value };
  });
  const parameters = [...kept, ...changed];
  const questions = [...asked.filter(({ id }) => !shared.some((one) => one.id === id)), ...shared];
  return {
    overlay: {
      ...before,
      ...rest,
      title: keep(before?.title, title) ?? texts(title),
      reason: keep(before?.reason, reason) ?? reason,
      pack: before?.pack ?? { id: pack.id, from: pack.version },
    },
    ...(parameters.length === 0 ? {} : { parameters }),
    ...(questions.length === 0 ? {} : { questions }),
    ...others,
  };
}

/** A head filled in where it is still empty, so that changes can be tried before anything is said about them. */
export function filledIn({ head, ...rest }: Draft): Draft {
  const or = (text: string) => (text.trim() === '' ? 'draft' : text);
  const { id, title, author, place, reason } = head;
  const day = /^\d{4}-\d\d-\d\d$/.test(head.validFrom) ? head.validFrom : '2000-01-01';
  return {
    ...rest,
    head: {
      ...head,
      id: /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id) ? id : 'draft',
      title: or(title),
      author: or(author),
      place: or(place),
      reason: or(reason),
      validFrom: day,
    },
  };
}

type Treatments = Pick<Bench, 'shipped' | 'treatments'>;

const keyOf = ({ shipped }: Treatments): string => `${draftKey}.${shipped.id}`;

const isFirst = ({ shipped, treatments }: Treatments): boolean => shipped.id === treatments[0]?.id;

/** The draft of the bench's treatment kept on this device; null where none is. One kept before treatments were named is of the first. */
export function readDraft(memory: Memory, bench: Treatments): Draft | null {
  const text = memory.read(keyOf(bench)) ?? (isFirst(bench) ? memory.read(draftKey) : null);
  try {
    const kept = JSON.parse(text ?? 'null') as Draft | null;
    return kept !== null && typeof kept.head === 'object' && typeof kept.limits === 'object' ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps the draft on this device, so that nothing typed is lost; null forgets it. */
export function keepDraft(memory: Memory, bench: Treatments, draft: Draft | null): void {
  memory.write(keyOf(bench), draft === null ? null : JSON.stringify(draft));
  if (isFirst(bench)) memory.write(draftKey, null);
}

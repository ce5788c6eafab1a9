import { carriedOver } from '../../core/dialogue/carried-over.ts';
import type { Conversation } from '../../core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../core/dialogue/events.ts';
import { refuseVerdict } from '../../core/dialogue/handed-over.ts';
import { latestStart } from '../../core/dialogue/latest-start.ts';
import { standingOf } from '../../core/dialogue/standing.ts';
import { openConversation, step } from '../../core/dialogue/step.ts';
import { viewOf } from '../../core/dialogue/view.ts';
import { codedError, reportOf } from '../../core/errors/coded-error.ts';
import { evaluateWithEngine } from '../../core/rules/engine.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import type { ConversationState, Dialogue } from './types.ts';

/** A conversation together with the pack that it was begun under. */
export interface PackConversation extends ConversationState {
  readonly conversation: Conversation;
  readonly pack: Pack;
}

/**
 * The core's conversation over treatment packs: one that was begun under a hash stays with the pack of that hash; where that is no
 * longer there, it is looked at under the first pack of the same treatment, else under the first of all. `packsNow` gives those that
 * there are just then.
 */
export function dialogueOver(packsNow: () => readonly [Pack, ...Pack[]]): Dialogue<PackConversation> {
  const packOf = (events: readonly ConversationEvent[]): Pack => {
    const started = latestStart(events);
    const packs = packsNow();
    const { packId, packHash } = started ?? {};
    return packs.find(({ hash }) => hash === packHash) ?? packs.find(({ id }) => id === packId) ?? packs[0];
  };
  return {
    open: (events, now) => {
      const pack = packOf(events);
      return withPack(openConversation(events, { pack, now }), pack);
    },
    step: ({ conversation, pack: before }, event, now) => {
      const pack = event.kind === 'started' ? packOf([event]) : before;
      return withPack(step(conversation, event, { pack, now }), pack);
    },
    viewOf: ({ conversation, pack }, now) => viewOf(conversation, { pack, now }),
    carriedOver: ({ conversation, pack }, to, at) => carriedOver(conversation.state, to, at, pack),
    refuseHandedOver: (event) => {
      if (event.kind === 'verdict-given') {
        const hash = event.decision.pack.hash;
        const pack = packsNow().find((one) => one.hash === hash);
        return pack ? refuseVerdict(event, pack) : otherRules(hash);
      }
      if (event.kind !== 'started' || packsNow().some(({ hash }) => hash === event.packHash)) return null;
      return otherRules(event.packHash);
    },
    evaluate: async ({ conversation, pack }, tag) => {
      const standing = standingOf(conversation.state, pack);
      if (standing?.tag !== tag) {
        throw codedError('UNEXPECTED', { expected: 'an evaluation of the present facts', came: 'another' });
      }
      return Object.fromEntries(await evaluateWithEngine(standing.compiled, standing.facts));
    },
  };
  function otherRules(came: string) {
    return reportOf('CONVERSATION_OTHER_RULES', {
      expected: packsNow()
        .map(({ hash }) => hash)
        .join(', '),
      came,
    });
  }
}

function withPack<S extends { readonly conversation: Conversation }>(step: S, pack: Pack) {
  const { conversation } = step;
  return { ...step, conversation: { events: conversation.events, conversation, pack } };
}

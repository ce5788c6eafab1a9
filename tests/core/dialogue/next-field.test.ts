import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carriedOver } from '../../../src/core/dialogue/carried-over.ts';
import type { ConversationEvent, FieldProfile } from '../../../src/core/dialogue/events.ts';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { step } from '../../../src/core/dialogue/step.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition, factIds } from '../../fixtures/core-facts.ts';
import { answerOf, people } from './answers.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { fieldOf, filled, look, morning, pressed, said, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const mill = { ...fieldOf({ 'field.latitude': 54, 'field.longitude': -2 }), id: 'mill-piece' };
const near: FieldProfile = { ...mill, id: 'top-brow', name: 'Top Brow' };
const far = { ...fieldOf({ 'field.latitude': 54.1, 'field.longitude': -2 }), id: 'far-off', name: 'Far Off' };
const told: readonly Told[] = [
  started(pack, mill),
  pressed('country', 'england'),
  pressed('soil-feel', 'moist'),
  pressed('partner', 'yes'),
  filled('wind', { 'wind.boomKmh': 6 }),
  pressed('wind-towards', 'yes'),
];
const later = (minutes: number) => epochSeconds(morning + minutes * 60);
const carried = (to: FieldProfile | null, minutes: number) =>
  carriedOver(talk(told, world).state, to, later(minutes), pack)?.observations.map(({ fact }) => fact);

describe('what goes along to the next field', () => {
  test('facts of the farm, and weather seen nearby within its time; soil, crop and what lies downwind never', () => {
    expect(carried(near, 30)).toEqual(['field.country', 'treatment.partnerInTank', 'wind.boomKmh']);
  });

  test.each([
    ['further away than the pack allows', far, 30],
    ['of which the place is not known', null, 30],
    ['looked at after more than the pack allows', near, 70],
  ] as const)('no weather for a field %s', (_, to, minutes) => {
    expect(carried(to, minutes)).toEqual(['field.country', 'treatment.partnerInTank']);
  });

  test('nothing that the profile of the next field tells itself', () => {
    const own = { ...fieldOf({ 'field.country': 'GB-SCT' }), id: 'own' };
    expect(carried(own, 30)).toEqual(['treatment.partnerInTank']);
  });

  test('whatever is told, never a fact that holds for a field alone', () => {
    fc.assert(
      fc.property(people, (person) => {
        const all = pack.questions.map((question, index) => answerOf(person, question, index));
        const { state } = talk([started(pack, mill), ...all], world);
        for (const { fact } of carriedOver(state, near, later(40), pack)?.observations ?? []) {
          expect(['farm', 'near']).toContain(factDefinition(fact).scope);
          expect(fact).not.toMatch(/^(soil|crop|weed)\./);
        }
      }),
      { numRuns: 20 },
    );
    expect(factIds.filter((fact) => /^(soil|crop|weed)\./.test(fact) && factDefinition(fact).scope)).toEqual([]);
  });

  test('is listed as carried over with its field, and can be changed', () => {
    const over = carriedOver(talk(told, world).state, near, later(10), pack)!;
    const next = take(
      talk(told, world),
      { ...started(pack, near), ...stamp(10), carried: over } as Parameters<typeof take>[1],
      world,
    );
    const view = look(next, pack, 12);
    expect(view.said.find(({ fact }) => fact === 'treatment.partnerInTank')).toMatchObject({
      from: 'you said, 9 min ago, for Mill Piece',
      canChange: true,
    });
    expect(view.entries.map((entry) => ('text' in entry ? entry.text : ''))).toContainEqual(
      expect.stringMatching(/^Carried over from Mill Piece, since it holds here too: /),
    );
    expect(view.fields.map(({ text }) => text)).toEqual(['Mill Piece: no answer yet', 'Top Brow: no answer yet']);
  });

  test('a value understood with doubt stays doubtful and is read back before spray today rests on it', () => {
    const understand = listener({ 'partner maybe not': heard('air.temperatureC', 8, { doubtful: true }) });
    const first = talk([started(pack, mill), said('partner maybe not')], { ...world, understand });
    const over = carriedOver(first.state, near, later(10), pack)!;
    expect(over.observations[0]).toMatchObject({ fact: 'air.temperatureC', doubtful: true });
    const field = { ...fieldLess(fitMorning, 'air.temperatureC'), id: 'top-brow', name: 'Top Brow' };
    const next = take(
      first,
      { ...started(pack, field), ...stamp(10), carried: over } as Parameters<typeof take>[1],
      world,
    );
    expect(openQuestion(next.state, pack)?.id).toBe('confirm:air.temperatureC');
    expect(next.state.verdicts).toEqual([]);
  });

  test('is begun by whoever runs the conversation: asked for once, by its id, or by none where a person is to choose', () => {
    const fields = [
      { id: 'mill-piece', name: 'Mill Piece' },
      { id: 'top-brow', name: 'Top Brow' },
    ];
    const begun = talk([{ ...started(pack, mill), fields } as Told], world);
    const wish = (told: Told) => step(begun, { ...told, ...stamp(5) } as ConversationEvent, world);
    const next = wish({ kind: 'requested', request: 'same-for' });
    expect(next.effects).toEqual([{ kind: 'same-for', field: 'top-brow' }]);
    expect(step(next.conversation, { ...said('hm'), ...stamp(6) } as ConversationEvent, world).effects).toEqual([]);
    expect(wish(said('the same for Nowhere')).effects).toEqual([{ kind: 'same-for', field: null }]);
  });
});

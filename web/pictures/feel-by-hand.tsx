import { pictureWords } from '../words.ts';
import { Drawing } from './drawing.tsx';

/** What a squeezed handful does: how well a ball holds, crumbs that fall off, length of the ribbon, water on it. */
interface Handful {
  readonly ball: 'none' | 'weak' | 'firm';
  readonly crumbs: boolean;
  readonly ribbon: 0 | 1 | 2;
  readonly water: 0 | 1 | 2 | 3;
}

const handful = (
  ball: Handful['ball'],
  crumbs: boolean,
  ribbon: Handful['ribbon'],
  water: Handful['water'],
): Handful => ({
  ball,
  crumbs,
  ribbon,
  water,
});

/**
 * The feel classes by texture group: sand, loam, clay. After the USDA NRCS guide "Estimating Soil Moisture by Feel and
 * Appearance" (1998), from memory; the words of the question decide, not the drawing.
 */
const handfuls = {
  dry: [handful('none', true, 0, 0), handful('none', true, 0, 0), handful('none', true, 0, 0)],
  'slightly-moist': [handful('weak', true, 0, 0), handful('weak', true, 0, 0), handful('weak', false, 0, 0)],
  moist: [handful('weak', false, 0, 1), handful('firm', false, 1, 1), handful('firm', false, 2, 1)],
  wet: [handful('weak', false, 0, 2), handful('firm', false, 1, 2), handful('firm', false, 2, 2)],
  'at-capacity': [handful('weak', false, 0, 3), handful('firm', false, 1, 3), handful('firm', false, 2, 3)],
} as const;

const groups = ['light', 'medium', 'heavy'] as const;

/** A table of handfuls: a row for each feel, a column for each texture group. */
export function FeelByHand() {
  const words = pictureWords['feel-by-hand'];
  return (
    <table class="picture-table">
      <caption>{words.title}</caption>
      <thead>
        <tr>
          {groups.map((group) => (
            <th scope="col" key={group}>
              {words.groups[group]}
            </th>
          ))}
        </tr>
      </thead>
      {(Object.keys(handfuls) as (keyof typeof handfuls)[]).map((feel) => (
        <tbody key={feel}>
          <tr>
            <th scope="colgroup" colSpan={3}>
              {words.feels[feel]}
            </th>
          </tr>
          <tr>
            {handfuls[feel].map((one, at) => (
              <td key={groups[at]}>
                <Drawing says={saidOf(one)} caption={saidOf(one)} size={[100, 70]}>
                  <Soil {...one} />
                </Drawing>
              </td>
            ))}
          </tr>
        </tbody>
      ))}
    </table>
  );
}

function saidOf({ ball, ribbon, water }: Handful): string {
  const { balls, ribbons, waters } = pictureWords['feel-by-hand'];
  return [balls[ball], ribbons[ribbon], waters[water]].filter((part) => part !== '').join(', ');
}

function Soil({ ball, crumbs, ribbon, water }: Handful) {
  return (
    <>
      {ball === 'none' && <path class="pic-earth" d="M18 60q8-20 24-26 12-5 22 3 14 6 18 23z" />}
      {ball === 'weak' && <path class="pic-earth" d="M30 54q-8-14 3-26 6-10 18-8 14-2 18 12 5 12-6 24z" />}
      {ball === 'firm' && <circle class="pic-earth" cx="42" cy="38" r="22" />}
      {ball === 'weak' && <path class="pic-crack" d="M44 21l4 12-6 8 7 13" />}
      {ball === 'firm' && <path class="pic-mark" d="M26 30q6 5 12 1M25 40q8 5 14 0M28 49q7 4 12-1" />}
      {ribbon === 1 && <path class="pic-earth" d="M60 26l18-4 3 9-19 5z" />}
      {ribbon === 2 && <path class="pic-earth" d="M60 24q18-8 30 2 5 10 2 26l-9-1q1-14-4-18-7-4-18 2z" />}
      {crumbs && <path class="pic-dots" d="M16 62h0M27 64h0M72 63h0M84 60h0M90 65h0M60 65h0M78 54h0M10 56h0" />}
      {water > 0 && <path class="pic-line" d="M12 66h76" />}
      {water > 1 && <path class="pic-line" d="M20 70q30-7 60 0" />}
      {water > 2 && (
        <path class="pic-line" d="M34 22q-6 8 0 10 6-2 0-10ZM52 16q-6 8 0 10 6-2 0-10ZM50 40q-6 8 0 10 6-2 0-10Z" />
      )}
    </>
  );
}

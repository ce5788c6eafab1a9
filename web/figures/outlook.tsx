import type { OutlookView } from '../../src/core/dialogue/outlook-view/types.ts';
import { Fold } from '../parts/fold.tsx';
import { TermText } from '../parts/term-text.tsx';
import { outlookWords } from '../words.ts';
import { HoursChart } from './hours-chart.tsx';
import { Patterns } from './patterns.tsx';
import { RainChart } from './rain-chart.tsx';
import { SoilChart } from './soil-chart.tsx';
import { WaterChart } from './water-chart.tsx';

/** Windows shown before the rest is asked for. */
const shownWindows = 3;

/** The coming days: a paragraph, the windows, what would have to change, and the figures. */
export function Outlook({ outlook }: { readonly outlook: OutlookView }) {
  const words = outlookWords.figures;
  const { windows, changes, least, hours, soil, rain, water } = outlook;
  const rest = windows.slice(shownWindows);
  return (
    <section class="outlook" aria-labelledby="outlook-heading">
      <Patterns />
      <h2 id="outlook-heading">{outlook.heading}</h2>
      <p class="outlook-text">
        <TermText text={outlook.paragraph} />
      </p>
      {outlook.further !== '' && (
        <p>
          <TermText text={outlook.further} />
        </p>
      )}
      {(windows.length > 0 || hours) && (
        <Fold title={windows.length > 0 ? words.windows : words.hourByHour}>
          <Windows windows={windows.slice(0, shownWindows)} />
          {hours && <HoursChart view={hours} />}
          {rest.length > 0 && (
            <Fold title={words.moreWindows(rest.length)}>
              <Windows windows={rest} />
            </Fold>
          )}
        </Fold>
      )}
      {changes.length > 0 && (
        <Fold title={words.changes}>
          <ul class="cautions">
            {changes.map((change) => (
              <li key=<TermText text={change} />>
                <TermText text={change} />
              </li>
            ))}
          </ul>
          {least && (
            <p>
              <TermText text={least} />
            </p>
          )}
        </Fold>
      )}
      {(soil || rain || water) && (
        <Fold title={words.more}>
          {soil && <SoilChart view={soil} />}
          {rain && <RainChart view={rain} />}
          {water && <WaterChart view={water} />}
        </Fold>
      )}
    </section>
  );
}

function Windows({ windows }: Pick<OutlookView, 'windows'>) {
  if (windows.length === 0) return null;
  return (
    <ul class="windows">
      {windows.map(({ text, state, from }) => (
        <li key={from} class={`is-${state}`}>
          {text}
        </li>
      ))}
    </ul>
  );
}

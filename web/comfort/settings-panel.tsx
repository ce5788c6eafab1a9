import type { Memory } from '../chat/memory.ts';
import { Fold } from '../parts/fold.tsx';
import { canListen, canSpeak } from '../speech/abilities.ts';
import { pageWords } from '../words.ts';
import { useComfort } from './comfort-context.ts';
import { LanguageChoice } from './language-choice.tsx';
import { type Comfort, type Look, looks } from './settings.ts';

const settingsId = 'settings';

/** Unfolds the settings and brings them to the top of the screen, wherever the page is. */
export function openSettings(): void {
  const section = document.getElementById(settingsId);
  const fold = section?.querySelector('details');
  if (!section || !fold) return;
  fold.open = true;
  fold.querySelector('summary')?.focus({ preventScroll: true });
  section.scrollIntoView({ block: 'start' });
}

/** Language and look of the page, buzzing, reading aloud and listening; kept on this device. */
export function SettingsPanel({ memory }: { readonly memory: Memory }) {
  const [comfort, change] = useComfort();
  const words = pageWords.comfort;
  return (
    <section id={settingsId} aria-label={words.heading}>
      <Fold title={words.heading} class="fold settings">
        <LanguageChoice memory={memory} />
        <fieldset class="look-choice">
          <legend>{words.look}</legend>
          {(['device', ...looks] as const).map((look) => (
            <LookOption key={look} look={look} isChosen={comfort.look === look} onChoose={() => change({ look })} />
          ))}
        </fieldset>
        <fieldset>
          <legend>{words.voice}</legend>
          <Switch name="buzz" can={'vibrate' in navigator} words={words.buzz} />
          <Switch name="readsAloud" can={canSpeak()} words={words.readsAloud} />
          <Switch name="listens" can={canListen()} words={words.listens} />
          {comfort.listens && <Switch name="sendsHeard" can={canListen()} words={words.sendsHeard} />}
        </fieldset>
        <p class="quiet">{words.kept}</p>
      </Fold>
    </section>
  );
}

interface LookOptionProps {
  readonly look: Look;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}

function LookOption({ look, isChosen, onChoose }: LookOptionProps) {
  return (
    <label class="sign">
      <input type="radio" name="look" value={look} checked={isChosen} onChange={onChoose} />
      <b>{pageWords.comfort.looks[look]}</b>
    </label>
  );
}

interface SwitchProps {
  readonly name: Exclude<keyof Comfort, 'look'>;
  /** False where this browser cannot: it is said instead of offered. */
  readonly can: boolean;
  readonly words: { readonly label: string; readonly help: string; readonly cannot: string };
}

function Switch({ name, can, words }: SwitchProps) {
  const [comfort, change] = useComfort();
  if (!can) return <p class="quiet">{words.cannot}</p>;
  return (
    <label class="sign">
      <input type="checkbox" checked={comfort[name]} onChange={() => change({ [name]: !comfort[name] })} />
      <span>
        <b>{words.label}</b>
        <small>{words.help}</small>
      </span>
    </label>
  );
}

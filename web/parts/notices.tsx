import type { PageState } from '../chat/page-state.ts';
import type { ClockFault } from '../offline/server-clock.ts';
import { pageWords } from '../words.ts';

interface NoticesProps {
  readonly state: PageState;
  readonly isTalking: boolean;
}

/** What stands for longer and matters: storage that keeps nothing, a wrong clock, a newer page, newer rules, rules that the server lacks. */
export function Notices({ state, isTalking }: NoticesProps) {
  const words = pageWords.offline;
  const { storage, clockFault, newVersion, newRules, staysHere, view } = state;
  const isFree = !isTalking || (view?.question === null && view.busy === null);
  const texts = [
    ...(storage === 'full' || storage === 'none' ? [words[storage]] : []),
    ...(clockFault ? [clockText(clockFault)] : []),
    ...(staysHere && isTalking ? [words.staysHere] : []),
    ...(newRules && !staysHere && isTalking ? [words.newRules] : []),
  ];
  return (
    <div class="notices" role="status">
      {texts.map((text) => (
        <p key={text} class="notice">
          {text}
        </p>
      ))}
      {newVersion && (
        <div class="notice">
          <p>{isFree ? words.newVersionFree : words.newVersion}</p>
          {isFree && (
            <button type="button" class="button" onClick={newVersion}>
              {words.useNew}
            </button>
          )}
        </div>
      )}
    </div>
  );
}

function clockText(fault: ClockFault): string {
  const words = pageWords.offline;
  if (fault.kind === 'set-back') return words.clockSetBack;
  const minutes = Math.round(Math.abs(fault.aheadSeconds) / 60);
  const span = words.span(Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60);
  return words.clockOff(span, fault.aheadSeconds > 0);
}

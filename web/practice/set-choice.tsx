import { useRef, useState } from 'preact/hooks';
import { isLoamwardError, reportOf } from '../../src/core/errors/coded-error.ts';
import { type DaySet, parseDaySet } from '../../src/core/practice/files.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { PracticeWorld } from '../../src/core/practice/types.ts';
import { errorIn } from '../../src/core/words/errors.ts';

interface SetChoiceProps {
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
  /** True while days of a file are put. */
  readonly isOpen: boolean;
  /** Null goes back to days made from the rules. */
  readonly onOpen: (set: DaySet | null) => void;
}

/** Opens a file of days that an adviser made from real weather; a file that does not fit is refused and said so. */
export function SetChoice({ world, speech: { practice, words }, isOpen, onOpen }: SetChoiceProps) {
  const input = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState('');
  const open = async (file: File) => {
    setRefused('');
    try {
      onOpen(parseDaySet(JSON.parse(await file.text()), world.pack, file.name));
    } catch (error) {
      const report = isLoamwardError(error)
        ? error.toJSON()
        : reportOf('FILE_NOT_JSON', { expected: 'one JSON value', came: String(error), file: file.name });
      setRefused(practice.setRefused(errorIn(report, words).says));
    }
  };
  return (
    <div class="choices">
      <p class="quiet">{practice.openSetNote}</p>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        hidden
        aria-label={practice.openSet}
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file) void open(file);
        }}
      />
      <button type="button" class="button" onClick={() => input.current?.click()}>
        {practice.openSet}
      </button>
      {isOpen && (
        <button type="button" class="button" onClick={() => onOpen(null)}>
          {practice.closeSet}
        </button>
      )}
      <p role="status">{refused}</p>
    </div>
  );
}

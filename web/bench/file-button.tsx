import { useRef } from 'preact/hooks';

interface FileButtonProps {
  readonly label: string;
  readonly onText: (text: string, file: string) => void;
}

/** A button that lets the person choose a JSON file, and hands on its text. */
export function FileButton({ label, onText }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        hidden
        aria-label={label}
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file) void file.text().then((text) => onText(text, file.name));
        }}
      />
      <button type="button" class="button" onClick={() => input.current?.click()}>
        {label}
      </button>
    </>
  );
}

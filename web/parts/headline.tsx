/** The answer in a sentence. What to do, up to its colon, stands out of it: that is read at arm's length. */
export function Headline({ text }: { readonly text: string }) {
  const end = text.indexOf(':') + 1;
  return (
    <>
      {end > 0 && <b>{text.slice(0, end)}</b>}
      {text.slice(end)}
    </>
  );
}

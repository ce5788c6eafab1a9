import { useEffect, useState } from 'preact/hooks';

/** Parts of the page that have an address of their own, behind the # of the page's. */
export const places = ['practice', 'logic', 'glossary', 'hand', 'card', 'bench'] as const;

/** One of them; null for the conversation. */
export type Place = (typeof places)[number] | null;

/** The part of the page that the address names. Addresses within a part, as of the skip link, leave it where it is. */
export function usePlace(): Place {
  const [place, setPlace] = useState<Place>(() => placeIn(location.hash) ?? null);
  useEffect(() => {
    const look = () => {
      const found = placeIn(location.hash);
      if (found !== undefined) setPlace(found);
    };
    addEventListener('hashchange', look);
    return () => removeEventListener('hashchange', look);
  }, []);
  return place;
}

function placeIn(hash = ''): Place | undefined {
  const [name = ''] = hash.replace(/^#/, '').split('/');
  return name === '' || name === 'start' ? null : places.find((one) => one === name);
}

import type { Place } from './places.ts';

/** Drawn signs of the places, in narrow line. */
export function PlaceSign({ of }: { of: Place['id'] }) {
  return (
    <svg
      className="place-sign"
      aria-hidden="true"
      width="32"
      height="28"
      viewBox="0 0 32 28"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
    >
      <path d={SIGNS[of]} />
    </svg>
  );
}

const SIGNS: Readonly<Record<Place['id'], string>> = {
  // A shed with its door and shelf.
  garage: 'M4 12L16 3L28 12V26H4ZM10 26V16H22V26M10 20H22',
  // A tall wagon from the side.
  vehicle:
    'M2 21V13H9L13 6H28V21M2 21H4M12 21H20M28 21H30V18H28M8 17A4 4 0 1 0 8 25A4 4 0 1 0 8 17M24 17A4 4 0 1 0 24 25A4 4 0 1 0 24 17',
  // The staircase of the curve.
  kit: 'M3 2V25H30M3 22H9V15H15V10H22V7H29',
  // A hex nut, seen from above.
  jobs: 'M10 3.6H22L28 14L22 24.4H10L4 14ZM16 8.5A5.5 5.5 0 1 0 16 19.5A5.5 5.5 0 1 0 16 8.5',
  // A tool roll laid open, a tool in each slot.
  bags: 'M4 4H28V25H4ZM4 11H28M10 11V25M16 11V25M22 11V25M7 14V22M13 14V22M19 14V22M25 14V22',
};

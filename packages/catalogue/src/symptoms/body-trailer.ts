import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

/** What is loose, broken or towed. */
export const BODY_TRAILER: readonly Symptom[] = [
  {
    id: 'loose-outside',
    area: 'body and trailer',
    title: 'Something on the body is loose or will not shut',
    first: ['What can fall on the road or on somebody comes first: tie it before you look further.'],
    questions: [
      ask('what', 'What is it?', {
        rack: 'Roof rack',
        bar: 'Bull bar or bash plate',
        winch: 'Winch',
        bonnet: 'Bonnet',
        door: 'Door, tailgate or window box',
        canopy: 'Canopy or camper',
        lamp: 'Lamp or aerial',
        seat: 'Seat or belt',
        battery: 'Battery tray or a bracket in the engine bay',
        body: 'The body on its frame',
      }),
    ],
    leads: [
      lead('rack-loose', { what: 'rack' }),
      lead('bar-or-plate-loose', { what: 'bar' }),
      lead('winch-mount-loose', { what: 'winch' }),
      lead('bonnet-latch-failed', { what: 'bonnet' }),
      lead('door-latch-failed', { what: 'door' }),
      lead('canopy-loose', { what: 'canopy' }),
      lead('lamp-bracket-loose', { what: 'lamp' }),
      lead('seat-loose', { what: 'seat' }),
      lead('battery-tray-broken', { what: 'battery' }),
      lead('body-mount-broken', { what: 'body' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'glass-wipers',
    area: 'body and trailer',
    title: 'Glass, windows or wipers',
    first: ['Gloves and eye protection before touching broken glass.'],
    questions: [
      ask('what', 'What is it?', {
        chip: 'A chip or short crack in the windscreen',
        shattered: 'Windscreen shattered, little to see through',
        side: 'A side window broken',
        dropped: 'A window down in the door, or stuck open',
        blades: 'Wipers move and smear',
        dead: 'Wipers do not move',
      }),
    ],
    leads: [
      lead('windscreen-chipped', { what: 'chip' }),
      lead('windscreen-shattered', { what: 'shattered' }),
      lead('side-window-broken', { what: 'side' }),
      lead('window-dropped', { what: 'dropped' }),
      lead('wiper-blades-torn', { what: 'blades' }),
      lead('wipers-dead', { what: 'dead' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'trailer',
    area: 'body and trailer',
    title: 'Trouble with the trailer',
    first: [
      'Chock the trailer before it is parted from the vehicle. Leaving it, locked and marked, is often the best repair.',
    ],
    questions: [
      ask('what', 'What is it?', {
        tyre: 'A tyre',
        hub: 'A hub hot, smoking or rumbling',
        spring: 'It leans, or an axle stands crooked',
        hitch: 'The hitch moves on the chassis',
        ball: 'The towball turns',
        lamps: 'Its lamps',
      }),
    ],
    leads: [
      lead('trailer-tyre-flat', { what: 'tyre' }),
      lead('trailer-bearing-failed', { what: 'hub' }),
      lead('trailer-spring-broken', { what: 'spring' }),
      lead('hitch-loose', { what: 'hitch' }),
      lead('towball-loose', { what: 'ball' }),
      lead('trailer-lights-dead', { what: 'lamps' }),
    ],
    basis: COMMON_PRACTICE,
  },
];

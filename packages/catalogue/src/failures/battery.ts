import { estimate } from '../shape/basis.ts';
import type { Failure } from '../shape/failure.ts';

/** Flat, worn or badly connected batteries. Weights per hundred. */
export const BATTERY_FAILURES: readonly Failure[] = [
  {
    id: 'battery-flat',
    group: 'battery',
    title: 'Battery run flat: lamps, fridge or a long stand',
    share: 45,
    jobs: ['ST-01', 'ST-01B', 'ST-01C'],
    basis: estimate("The usual reason for a club's call, most of all after nights of camping"),
  },
  {
    id: 'battery-worn-out',
    group: 'battery',
    title: 'Battery too old to hold a charge',
    share: 25,
    restored: 0.75,
    jobs: ['ST-01', 'ST-01B', 'ST-01C', 'ST-03B'],
    renew: { what: 'New starting battery', rateFactor: 0.15, price: 'P5' },
    basis: estimate('Heat and vibration; a boost gets it going once, each time'),
  },
  {
    id: 'battery-terminal-loose',
    group: 'battery',
    title: 'Loose or dirty battery terminal',
    share: 18,
    immobilises: 0.9,
    restored: 0.97,
    jobs: ['ST-02'],
    renew: {
      what: 'Clean, tighten and grease both terminals and their earths',
      rateFactor: 0.3,
      price: 'P1',
    },
    basis: estimate('The classic dead vehicle; shaken loose on corrugations'),
  },
  {
    id: 'battery-terminal-broken',
    group: 'battery',
    title: 'Battery clamp or post broken',
    share: 5,
    restored: 0.9,
    jobs: ['ST-02B'],
    renew: { what: 'New clamps and a battery that is strapped down', rateFactor: 0.3, price: 'P2' },
    basis: estimate('A battery that moves breaks its posts'),
  },
  {
    id: 'battery-cable-broken',
    group: 'battery',
    title: 'Engine earth strap or battery cable broken',
    share: 4,
    restored: 0.9,
    jobs: ['ST-02C'],
    renew: { what: 'New earth strap with room to move', rateFactor: 0.3, price: 'P2' },
    basis: estimate('Engines rock, straps fatigue'),
  },
  {
    id: 'battery-shorted',
    group: 'battery',
    title: 'Battery dead inside',
    share: 3,
    restored: 0.7,
    jobs: ['ST-03B'],
    renew: { what: 'New starting battery', rateFactor: 0.15, price: 'P5' },
    basis: estimate('A broken plate; no boost holds it'),
  },
];

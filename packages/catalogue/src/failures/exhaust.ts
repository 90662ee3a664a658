import { estimate } from '../shape/basis.ts';
import type { Failure } from '../shape/failure.ts';

/** Exhaust. Weights per hundred. */
export const EXHAUST_FAILURES: readonly Failure[] = [
  {
    id: 'exhaust-hanger-broken',
    group: 'exhaust',
    title: 'Exhaust hanger broken, pipe hanging',
    share: 50,
    immobilises: 0.08,
    restored: 0.97,
    jobs: ['EX-01'],
    renew: { what: 'New hangers', rateFactor: 0.2, price: 'P1' },
    basis: estimate('The usual one on corrugations'),
  },
  {
    id: 'exhaust-blows-forward',
    group: 'exhaust',
    title: 'Exhaust blows ahead of the cab',
    share: 25,
    immobilises: 0.15,
    restored: 0.85,
    jobs: ['EX-02'],
    renew: { what: 'New flexible or front pipe', rateFactor: 0.2, price: 'P4' },
    basis: estimate('Cracked flexibles and flanges; gas in the cab'),
  },
  {
    id: 'exhaust-blows-rear',
    group: 'exhaust',
    title: 'Rear pipe or silencer holed',
    share: 12,
    immobilises: 0.02,
    restored: 0.9,
    jobs: ['EX-02'],
    basis: estimate('Noise more than harm'),
  },
  {
    id: 'particulate-filter-blocked',
    group: 'exhaust',
    title: 'Particulate filter blocked',
    share: 13,
    when: { all: ['particulate-filter'] },
    immobilises: 0.5,
    restored: 0.7,
    jobs: ['EX-02B'],
    renew: { what: 'Burn it clear before leaving', rateFactor: 0.6, price: 'P1' },
    basis: estimate('Days of slow work'),
  },
];

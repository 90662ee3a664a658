import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Symptom } from '../shape/symptom.ts';
import { ask, lead } from './write.ts';

/** Too hot, or no oil pressure. */
export const HEAT: readonly Symptom[] = [
  {
    id: 'overheats',
    area: 'heat',
    title: 'Overheats',
    first: [
      'Stop in the next minute, idle only if the fan pulls and nothing steams, else engine off.',
      'Never open the cap while it is hot: wait until a hand can rest on the hose, at least half an hour. Scalds are the common injury here.',
    ],
    questions: [
      ask('loss', 'When cool: where is the coolant?', {
        spills: 'It drips, sprays or has left a trail',
        low: 'The level is low, and nothing shows outside',
        full: 'The level is where it was',
      }),
      ask('belt', 'Engine off: is the belt there, tight and whole?', {
        gone: 'Gone, torn or slack',
        there: 'There and tight',
      }),
      ask('when', 'When does it get hot?', {
        slow: 'Slow, standing or in sand; better at speed',
        speed: 'At speed or uphill',
        always: 'Everywhere, soon after starting',
      }),
      ask('fan', 'Engine hot and running, from the side: does the fan pull air?', {
        yes: 'It pulls hard',
        no: 'It stands, or only drifts round',
        unknown: 'I cannot tell, or the engine stays off',
      }),
    ],
    leads: [
      lead('hose-split', { loss: 'spills', belt: 'there' }),
      lead('heater-hose-split', { loss: 'spills', belt: 'there' }),
      lead('radiator-core-leaks', { loss: 'spills low', belt: 'there' }),
      lead('radiator-tank-cracked', { loss: 'spills', belt: 'there' }),
      lead('expansion-bottle-cracked', { loss: 'spills low', belt: 'there' }),
      lead('cap-lost', { loss: 'spills low', belt: 'there' }),
      lead('water-pump-failed', { loss: 'spills low full', belt: 'there' }),
      lead('v-belt-broken', { belt: 'gone' }),
      lead('multi-rib-belt-broken', { belt: 'gone' }),
      lead('pulley-seized', { belt: 'gone' }),
      lead('thermostat-stuck', { loss: 'full', belt: 'there', when: 'always speed', fan: 'yes unknown' }),
      lead('electric-fan-dead', { loss: 'full', belt: 'there', when: 'slow', fan: 'no unknown' }),
      lead('fan-coupling-slips', { loss: 'full', belt: 'there', when: 'slow', fan: 'no unknown' }),
      lead('core-choked', { loss: 'full', belt: 'there', fan: 'yes unknown' }),
      lead('engine-internals', { loss: 'low', belt: 'there' }),
    ],
    basis: COMMON_PRACTICE,
  },
  {
    id: 'oil-lamp',
    area: 'heat',
    title: 'Oil lamp on, or oil pressure gone',
    first: [
      'Engine off at once, while still rolling if the road allows: seconds count. Do not start it again to see.',
    ],
    questions: [
      ask('stick', 'After five minutes on level ground: what does the dipstick say?', {
        none: 'Nothing on it, or far below the mark',
        right: 'Between the marks',
        milky: 'Milky, or above the mark',
      }),
      ask('under', 'What is under the engine?', {
        stream: 'A stream or puddle, from the lowest point of the sump',
        side: 'Oil running down the side, from the filter or a pipe',
        dry: 'It is dry',
      }),
    ],
    leads: [
      lead('sump-holed', { stick: 'none', under: 'stream' }),
      lead('sump-plug-lost', { stick: 'none', under: 'stream' }),
      lead('oil-leak', { stick: 'none right', under: 'side' }),
      lead('turbo-line-loose', { stick: 'none right', under: 'side' }),
      lead('sensor-plug-bad', { stick: 'right', under: 'dry' }),
      lead('wire-chafed', { stick: 'right', under: 'dry' }),
      lead('engine-internals', { stick: 'right milky none', under: 'dry' }),
    ],
    basis: COMMON_PRACTICE,
  },
];

/** Failures that nothing at the roadside puts right: why, and what is left to do. By failure id. */
export const STOPS: ReadonlyMap<string, string> = new Map([
  [
    'master-cylinder-dead',
    'The brakes cannot be trusted and their master cylinder is not mended at the roadside: do not drive, call for help.',
  ],
  [
    'steering-box-broken',
    'A steering box or rack that is broken or torn loose gives no warning before it lets go: do not drive, call for help.',
  ],
  [
    'axle-housing-broken',
    'An axle housing or stub axle carries the wheel; broken, it wants a workshop and a crane truck: call for help.',
  ],
  [
    'transfer-case-broken',
    'A transfer case broken inside wants the unit changed; turned on, it may lock the wheels: call for help.',
  ],
  [
    'starter-dead',
    'A starter dead in its windings or drive wants another starter. Pushing or towing a manual vehicle may start it, on firm open ground and with everybody out of the way; otherwise call for help.',
  ],
  [
    'control-unit-dead',
    'A dead control unit wants a coded new one and a workshop: make sure of its plugs and fuses, then call for help.',
  ],
  [
    'injection-fault',
    'Injection runs at pressures that go through skin: nothing is opened at the roadside. Call for help.',
  ],
  [
    'clutch-broken',
    'A clutch that gives no drive at all is behind the gearbox: it wants the gearbox out. Call for help.',
  ],
  [
    'automatic-failed',
    'An automatic gearbox that gives no drive with oil in it wants a workshop: check its oil once, then call for help.',
  ],
  [
    'gearbox-broken',
    'A gearbox broken inside may lock while rolling: do not try it again and again, call for help.',
  ],
  [
    'timing-belt-broken',
    'A broken timing belt has most likely bent valves, and turning the engine over does more harm: do not crank it, call for help.',
  ],
  [
    'engine-internals',
    'An engine failed inside is not mended at the roadside, and running it on ruins the rest: stop it, call for help.',
  ],
  [
    'ignition-lock-broken',
    'A jammed steering lock cannot be driven with and is not forced: call for help, with proof that the vehicle is yours.',
  ],
]);

/** The least garage that can be planned; belongings come last so that tests can add lines to them. */
export const SMALL = `waymend: 1
name: small
vehicles:
  ute: { name: Pickup, wheelbaseMm: 3000, emptyFrontKg: 1100, emptyRearKg: 900, ratedFrontKg: 1400, ratedRearKg: 1700, ratedGrossKg: 2900 }
people:
  ana: { name: Ana, skill: 3 }
trips:
  loop: { name: Loop, vehicle: ute, people: [ana] }
legs:
  l1: { trip: loop, order: 1, km: 300, surface: gravel, helpKm: 60 }
belongings:
  s10: { is: SK3-10 }`;

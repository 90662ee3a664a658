import { defineTable } from '../shape/define-table.ts';
import type { Numbers } from '../shape/table-checks.ts';
import { between, recomputed, rising, sameScale, unique } from '../shape/table-checks.ts';

/** Diameter of a gauge, mm: 0.127 x 92^((36 - n) / 39), n = 0, -1, -2, -3 for 0, 00, 000, 0000 (ASTM B258). */
export function awgDiameterMm(number: number): number {
  return 0.127 * 92 ** ((36 - number) / 39);
}

/** Annealed copper at 20 degC, ohm mm2/km (IACS). */
export const COPPER_OHM_MM2_PER_KM = 17.241;

export const AWG = defineTable({
  id: 'awg',
  title: 'Wire gauges: solid copper',
  citation: {
    body: 'ASTM',
    document: 'ASTM B258',
    edition: 'formula as in GNU units 2.22',
    part: 'diameter formula; resistance with 17.241 ohm mm2/km at 20 degC',
    obtained: 'computed',
  },
  columns: {
    awg: { title: 'Gauge', unit: 'text' },
    number: { title: 'Gauge number in the formula', unit: 'count' },
    diameter: { title: 'Diameter', unit: 'mm' },
    area: { title: 'Area', unit: 'mm2' },
    resistance: { title: 'Resistance at 20 degC', unit: 'ohm/km' },
  },
  rows: [
    { awg: '22', number: 22, diameter: 0.6438, area: 0.326, resistance: 52.962 },
    { awg: '20', number: 20, diameter: 0.8118, area: 0.518, resistance: 33.308 },
    { awg: '18', number: 18, diameter: 1.0237, area: 0.823, resistance: 20.948 },
    { awg: '16', number: 16, diameter: 1.2908, area: 1.309, resistance: 13.174 },
    { awg: '14', number: 14, diameter: 1.6277, area: 2.081, resistance: 8.285 },
    { awg: '12', number: 12, diameter: 2.0525, area: 3.309, resistance: 5.211 },
    { awg: '10', number: 10, diameter: 2.5882, area: 5.261, resistance: 3.277 },
    { awg: '8', number: 8, diameter: 3.2636, area: 8.366, resistance: 2.061 },
    { awg: '6', number: 6, diameter: 4.1154, area: 13.302, resistance: 1.296 },
    { awg: '4', number: 4, diameter: 5.1894, area: 21.151, resistance: 0.815 },
    { awg: '3', number: 3, diameter: 5.8273, area: 26.67, resistance: 0.646 },
    { awg: '2', number: 2, diameter: 6.5437, area: 33.631, resistance: 0.513 },
    { awg: '1', number: 1, diameter: 7.3481, area: 42.408, resistance: 0.407 },
    { awg: '0', number: 0, diameter: 8.2515, area: 53.475, resistance: 0.322 },
    { awg: '00', number: -1, diameter: 9.2658, area: 67.431, resistance: 0.256 },
    { awg: '000', number: -2, diameter: 10.4049, area: 85.029, resistance: 0.203 },
    { awg: '0000', number: -3, diameter: 11.684, area: 107.219, resistance: 0.161 },
  ],
  checks: [
    unique('awg'),
    rising('number', { falling: true }),
    rising('diameter'),
    between('diameter', 0.5, 12),
    sameScale('area', 1.7),
    recomputed<Numbers<'number' | 'diameter'>>('diameter', (row) => awgDiameterMm(row.number), 0.00006),
    recomputed<Numbers<'number' | 'area'>>(
      'area',
      (row) => (Math.PI / 4) * awgDiameterMm(row.number) ** 2,
      0.0006,
    ),
    recomputed<Numbers<'number' | 'resistance'>>(
      'resistance',
      (row) => COPPER_OHM_MM2_PER_KM / ((Math.PI / 4) * awgDiameterMm(row.number) ** 2),
      0.0011,
    ),
  ],
});

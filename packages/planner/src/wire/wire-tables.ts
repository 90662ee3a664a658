import { AMPACITY } from '@waymend/catalogue/standards/ampacity';
import { AMPACITY_HEAT } from '@waymend/catalogue/standards/ampacity-heat';
import { AWG } from '@waymend/catalogue/standards/awg';
import { AWG_SAE } from '@waymend/catalogue/standards/awg-sae';
import { FUSES_BLADE } from '@waymend/catalogue/standards/fuses-blade';
import { FUSES_MAXI } from '@waymend/catalogue/standards/fuses-maxi';
import { WIRE_METRIC } from '@waymend/catalogue/standards/wire-metric';
import { statusOf } from '@waymend/catalogue/shape/define-table';
import { amperes, ohmsPerMetre, squareMetres } from '@waymend/core/quantity/units';
import type { FuseSize, WireTables } from '@waymend/core/wiring/wire-tables';

/** Small blades up to here; above it their holders run hot, and the large blade is taken (common practice). */
const SMALL_BLADE_MOST = 30;

const mm2 = (n: number) => squareMetres(n * 1e-6);
const ohmPerKm = (n: number) => ohmsPerMetre(n * 1e-3);

/** The catalogue's tables of wire and fuses, in SI, as the wire rules read them. */
export const WIRE_TABLES: WireTables = {
  gauges: AMPACITY.rows.flatMap(({ awg, c60, c75, c80, c90, c105, c125, c200 }) => {
    const copper = AWG.rows.find((row) => row.awg === awg);
    if (copper === undefined) return [];
    const sae = AWG_SAE.rows.find((row) => row.awg === awg);
    const columns = [
      [60, c60],
      [75, c75],
      [80, c80],
      [90, c90],
      [105, c105],
      [125, c125],
      [200, c200],
    ] as const;
    return [
      {
        label: awg,
        area: mm2(copper.area),
        leastArea: sae === undefined ? null : mm2(sae.area),
        resistance: ohmPerKm(copper.resistance),
        allowed: columns.map(([insulationC, amps]) => ({ insulationC, amps: amperes(amps) })),
      },
    ];
  }),
  metric: WIRE_METRIC.rows.map(({ area, resistance }) => ({
    area: mm2(area),
    resistance: ohmPerKm(resistance),
  })),
  heat: AMPACITY_HEAT.rows.map((row) => ({
    insulationC: row.insulation,
    factor: row.factor,
    recalled: statusOf(AMPACITY_HEAT, row, 'factor') === 'recalled',
  })),
  fuses: [
    ...FUSES_BLADE.rows
      .filter(({ rating }) => rating <= SMALL_BLADE_MOST)
      .map(
        (row): FuseSize => ({
          amps: amperes(row.rating),
          kind: 'blade',
          colour: row.colour,
          recalled: statusOf(FUSES_BLADE, row, 'colour') === 'recalled',
        }),
      ),
    ...FUSES_MAXI.rows
      .filter(({ rating }) => rating > SMALL_BLADE_MOST)
      .map(
        (row): FuseSize => ({
          amps: amperes(row.rating),
          kind: 'large-blade',
          colour: row.colour,
          recalled: statusOf(FUSES_MAXI, row, 'colour') === 'recalled',
        }),
      ),
  ],
};

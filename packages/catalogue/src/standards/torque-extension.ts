import { defineTable } from '../shape/define-table.ts';
import { between, recomputed } from '../shape/table-checks.ts';

/**
 * What to set on a torque wrench that works through an extension in line with its handle: T L / (L + A), any one unit of
 * torque and any one unit of length. `lever` is from the square to the hand, `extension` from the square to the nut.
 */
export function settingWithExtension(torque: number, lever: number, extension: number): number {
  return (torque * lever) / (lever + extension);
}

/** The worked example of the manual. */
export const TORQUE_EXTENSION = defineTable({
  id: 'torque-extension',
  title: 'Torque wrench with an extension',
  citation: {
    body: 'US Army',
    document: 'TM 1-1500-204-23-9',
    edition: 'public release',
    part: 'torque wrench extensions, worked example',
    obtained: 'original',
  },
  columns: {
    torque: { title: 'Torque wanted', unit: 'lbf in' },
    lever: { title: 'Lever of the wrench', unit: 'in' },
    extension: { title: 'Extension', unit: 'in' },
    setting: { title: 'Setting', unit: 'lbf in' },
  },
  rows: [{ torque: 300, lever: 10, extension: 4, setting: 214 }],
  checks: [
    between('setting', 1, 5000),
    recomputed<{
      readonly torque: number;
      readonly lever: string | number;
      readonly extension: string | number;
      readonly setting: number;
    }>('setting', (row) => settingWithExtension(row.torque, Number(row.lever), Number(row.extension)), 0.5),
  ],
});

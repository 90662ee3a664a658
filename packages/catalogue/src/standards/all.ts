import type { Table } from '../shape/define-table.ts';
import { AMPACITY } from './ampacity.ts';
import { AMPACITY_HEAT } from './ampacity-heat.ts';
import { AWG } from './awg.ts';
import { AWG_SAE } from './awg-sae.ts';
import { BOX_WRENCH_LENGTHS } from './box-wrench-lengths.ts';
import { BRAKE_TUBE_NUTS } from './brake-tube-nuts.ts';
import { BUTTON_HEADS_ISO7380 } from './button-heads-iso7380.ts';
import { CLAMPS_DIN } from './clamps-din.ts';
import { CLAMPS_SAE } from './clamps-sae.ts';
import { COUNTERSUNK_ISO10642 } from './countersunk-iso10642.ts';
import { CROSS_HEADS } from './cross-heads.ts';
import { FAILURE_COUNTS } from './failure-counts.ts';
import { FAILURE_DISTANCES } from './failure-distances.ts';
import { FAILURE_SHARES } from './failure-shares.ts';
import { FIELD_REPAIRS } from './field-repairs.ts';
import { FLANGE_NUTS_ISO4161 } from './flange-nuts-iso4161.ts';
import { FLANGE_SCREWS_EN1662 } from './flange-screws-en1662.ts';
import { FLANGE_SCREWS_EN1665 } from './flange-screws-en1665.ts';
import { FLANGE_SCREWS_ISO15071 } from './flange-screws-iso15071.ts';
import { FRICTION_FACTORS } from './friction-factors.ts';
import { FUSE_DERATING } from './fuse-derating.ts';
import { FUSE_TIME } from './fuse-time.ts';
import { FUSES_BLADE } from './fuses-blade.ts';
import { FUSES_MAXI } from './fuses-maxi.ts';
import { HAND_FORCES } from './hand-forces.ts';
import { HEX_HEADS_DIN } from './hex-heads-din.ts';
import { HEX_HEADS_ISO } from './hex-heads-iso.ts';
import { HEX_HEADS_JIS_SMALL } from './hex-heads-jis-small.ts';
import { HEX_LEAST_WIDTHS } from './hex-least-widths.ts';
import { HEX_NUTS_ISO } from './hex-nuts-iso.ts';
import { HEX_THIN_NUTS_ISO } from './hex-thin-nuts-iso.ts';
import { INCH_HEADS } from './inch-heads.ts';
import { INCH_HEAVY_HEX } from './inch-heavy-hex.ts';
import { INTERCHANGE } from './interchange.ts';
import { LOAD_PLACARD } from './load-placard.ts';
import { LOBE_CAPS_ISO14579 } from './lobe-caps-iso14579.ts';
import { LOBE_CHEESE_ISO14580 } from './lobe-cheese-iso14580.ts';
import { LOBE_COUNTERSUNK_ISO14581 } from './lobe-countersunk-iso14581.ts';
import { LOBE_PAN_ISO14583 } from './lobe-pan-iso14583.ts';
import { LOBES } from './lobes.ts';
import { LOBES_EXTERNAL } from './lobes-external.ts';
import { LOW_HEADS_DIN6912 } from './low-heads-din6912.ts';
import { LOW_HEADS_DIN7984 } from './low-heads-din7984.ts';
import { METRIC_THREADS } from './metric-threads.ts';
import { PLUG_TORQUE } from './plug-torque.ts';
import { PROOF_LOADS_PUBLISHED } from './proof-loads-published.ts';
import { PROOF_STRENGTH_ISO898 } from './proof-strength-iso898.ts';
import { PROOF_STRENGTH_J429 } from './proof-strength-j429.ts';
import { PULLING_HABITS } from './pulling-habits.ts';
import { SELF_DISCHARGE } from './self-discharge.ts';
import { SET_SCREWS_ISO4026 } from './set-screws-iso4026.ts';
import { SHELF_LIFE } from './shelf-life.ts';
import { SLOT_BLADES } from './slot-blades.ts';
import { SOCKET_CAPS_ISO4762 } from './socket-caps-iso4762.ts';
import { SPARK_PLUGS } from './spark-plugs.ts';
import { SQUARE_DRIVES } from './square-drives.ts';
import { TORQUE_EXTENSION } from './torque-extension.ts';
import { TORQUE_INCH } from './torque-inch.ts';
import { TORQUE_METRIC } from './torque-metric.ts';
import { TORQUE_PUBLISHED } from './torque-published.ts';
import { TORQUE_SCATTER } from './torque-scatter.ts';
import { TORQUE_WRENCH_RANGE } from './torque-wrench-range.ts';
import { TYRE_LOAD_INDEX } from './tyre-load-index.ts';
import { TYRE_RULES } from './tyre-rules.ts';
import { TYRE_SPEED_SYMBOLS } from './tyre-speed-symbols.ts';
import { VOLTAGE_DROP } from './voltage-drop.ts';
import { WHEEL_NUT_HEXES } from './wheel-nut-hexes.ts';
import { WHEEL_NUT_TORQUE } from './wheel-nut-torque.ts';
import { WHEEL_NUT_TURNS } from './wheel-nut-turns.ts';
import { WIRE_METRIC } from './wire-metric.ts';
import { WRENCH_OPENINGS_INCH } from './wrench-openings-inch.ts';
import { WRENCH_OPENINGS_METRIC } from './wrench-openings-metric.ts';

/** Every table, in the order people read them; a test keeps this list equal to the files beside it. */
export const TABLES: readonly Table[] = [
  // What turns fasteners
  HEX_HEADS_ISO,
  HEX_NUTS_ISO,
  HEX_THIN_NUTS_ISO,
  HEX_HEADS_DIN,
  HEX_HEADS_JIS_SMALL,
  HEX_LEAST_WIDTHS,
  FLANGE_SCREWS_EN1662,
  FLANGE_SCREWS_ISO15071,
  FLANGE_SCREWS_EN1665,
  FLANGE_NUTS_ISO4161,
  SOCKET_CAPS_ISO4762,
  BUTTON_HEADS_ISO7380,
  COUNTERSUNK_ISO10642,
  SET_SCREWS_ISO4026,
  LOW_HEADS_DIN7984,
  LOW_HEADS_DIN6912,
  LOBE_CAPS_ISO14579,
  LOBE_CHEESE_ISO14580,
  LOBE_PAN_ISO14583,
  LOBE_COUNTERSUNK_ISO14581,
  LOBES,
  LOBES_EXTERNAL,
  CROSS_HEADS,
  SLOT_BLADES,
  INCH_HEADS,
  INCH_HEAVY_HEX,
  METRIC_THREADS,
  WRENCH_OPENINGS_METRIC,
  WRENCH_OPENINGS_INCH,
  INTERCHANGE,
  // Strength, torque and hands
  PROOF_STRENGTH_ISO898,
  PROOF_LOADS_PUBLISHED,
  PROOF_STRENGTH_J429,
  TORQUE_METRIC,
  TORQUE_INCH,
  TORQUE_PUBLISHED,
  TORQUE_SCATTER,
  FRICTION_FACTORS,
  WHEEL_NUT_TORQUE,
  WHEEL_NUT_TURNS,
  WHEEL_NUT_HEXES,
  TORQUE_EXTENSION,
  TORQUE_WRENCH_RANGE,
  SQUARE_DRIVES,
  HAND_FORCES,
  PULLING_HABITS,
  BOX_WRENCH_LENGTHS,
  // Tyres and load
  TYRE_LOAD_INDEX,
  TYRE_SPEED_SYMBOLS,
  TYRE_RULES,
  LOAD_PLACARD,
  // Wire and fuses
  AWG,
  AWG_SAE,
  WIRE_METRIC,
  AMPACITY,
  AMPACITY_HEAT,
  VOLTAGE_DROP,
  FUSES_BLADE,
  FUSES_MAXI,
  FUSE_TIME,
  FUSE_DERATING,
  // Plugs, tube nuts, clamps
  SPARK_PLUGS,
  PLUG_TORQUE,
  BRAKE_TUBE_NUTS,
  CLAMPS_SAE,
  CLAMPS_DIN,
  // Keeping and failing
  SELF_DISCHARGE,
  SHELF_LIFE,
  FIELD_REPAIRS,
  FAILURE_SHARES,
  FAILURE_COUNTS,
  FAILURE_DISTANCES,
];

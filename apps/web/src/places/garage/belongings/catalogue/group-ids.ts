import type { FunctionGroup } from '@waymend/planner/views/function-groups';

/** In the order of the planner's groups; a group left out or made up does not compile. */
const IN_ORDER: Readonly<Record<FunctionGroup, true>> = {
  turn: true,
  hold: true,
  grip: true,
  strike: true,
  cut: true,
  seal: true,
  lift: true,
  tyres: true,
  electric: true,
  fluids: true,
  measure: true,
  light: true,
  protect: true,
  parts: true,
};

const isGroup = (id: string): id is FunctionGroup => Object.hasOwn(IN_ORDER, id);

export const FUNCTION_GROUP_IDS: readonly FunctionGroup[] = Object.keys(IN_ORDER).filter(isGroup);

import type { Garage } from '@waymend/garage/record/schema';
import { EMPTY_GARAGE } from './empty-garage.ts';
import type { GarageRecord, RecordState } from './record-port.ts';

export function openMemoryRecord(): GarageRecord {
  let past: Garage[] = [];
  let future: Garage[] = [];
  let state: RecordState = {
    garage: EMPTY_GARAGE,
    canUndo: false,
    canRedo: false,
    saved: 'saved',
    changesSinceCopy: 0,
  };
  const listeners = new Set<() => void>();
  const set = (garage: Garage) => {
    state = { ...state, garage, canUndo: past.length > 0, canRedo: future.length > 0 };
    for (const l of listeners) l();
    return Promise.resolve();
  };
  return {
    getState: () => state,
    subscribe: (l) => {
      listeners.add(l);
      return () => listeners.delete(l);
    },
    edit: (_title, change) => {
      past.push(state.garage);
      future = [];
      return set(change(state.garage));
    },
    replace: (_title, garage) => {
      past.push(state.garage);
      future = [];
      return set(garage);
    },
    undo: () => {
      const to = past.pop();
      if (!to) return Promise.resolve();
      future.push(state.garage);
      return set(to);
    },
    redo: () => {
      const to = future.pop();
      if (!to) return Promise.resolve();
      past.push(state.garage);
      return set(to);
    },
    noteCopyMade: () => Promise.resolve(),
  };
}

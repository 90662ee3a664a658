import { createContext, use, useSyncExternalStore } from 'react';
import type { ReactNode } from 'react';
import type { PhotoStore } from '../record/photos.ts';
import type { PlannerClient } from '../worker/client.ts';
import type { PlanDesk, PlanState } from './plan-desk.ts';
import type { GarageShelf } from './garage-shelf.ts';
import type { GarageRecord, RecordState } from './record-port.ts';
import type { SettingsStore, Settings } from './settings.ts';
import type { Versions, VersionState } from './versions.ts';

/** Everything a screen may use, made once in main.tsx and handed down. */
export interface Stores {
  readonly record: GarageRecord;
  /** The other garages of this browser. */
  readonly shelf: GarageShelf;
  /** Of the garage that is open. */
  readonly photos: PhotoStore;
  readonly client: PlannerClient;
  /** A second worker, for reading only: what is typed is understood while a proof runs in the first. */
  readonly reader: PlannerClient;
  readonly desk: PlanDesk;
  readonly settings: SettingsStore;
  readonly versions: Versions;
  /** The date, for the record and for care; passed in so that tests can stop the clock. */
  readonly today: () => Date;
}

const Context = createContext<Stores | null>(null);

export function StoresProvider({ stores, children }: { stores: Stores; children: ReactNode }) {
  return <Context value={stores}>{children}</Context>;
}

export function useStores(): Stores {
  const stores = use(Context);
  if (stores === null) throw new Error('a screen stands outside the StoresProvider');
  return stores;
}

export function useRecord(): RecordState &
  Pick<GarageRecord, 'edit' | 'undo' | 'redo' | 'replace' | 'settle' | 'noteCopyMade'> {
  const { record } = useStores();
  const state = useSyncExternalStore(record.subscribe, record.getState);
  const { edit, undo, redo, replace, settle, noteCopyMade } = record;
  return { ...state, edit, undo, redo, replace, settle, noteCopyMade };
}

export function usePlan(): PlanState {
  const { desk } = useStores();
  return useSyncExternalStore(desk.subscribe, desk.getState);
}

export function useSettings(): Settings & { readonly change: SettingsStore['change'] } {
  const { settings } = useStores();
  const state = useSyncExternalStore(settings.subscribe, settings.getState);
  return { ...state, change: settings.change };
}

export function useVersions(): VersionState & Pick<Versions, 'take'> {
  const { versions } = useStores();
  return { ...useSyncExternalStore(versions.subscribe, versions.getState), take: versions.take };
}

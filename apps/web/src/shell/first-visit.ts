import type { PlannerClient } from '../worker/client.ts';
import type { GarageRecord } from './record-port.ts';
import { isEmptyGarage } from './empty-garage.ts';
import demoUrl from '../../../../examples/demo.garage.yaml?url';

const ASKED = /\?demo$/;

/**
 * Calls back when the address asks for the demo, as the one that `npm start` prints does; also in a page that is open
 * already. The question is taken off the address, so that a page that is loaded again does not ask anew.
 */
export function whenDemoAsked(view: Window, then: () => void): void {
  const look = (): void => {
    if (!ASKED.test(view.location.hash)) return;
    view.history.replaceState(view.history.state, '', view.location.hash.replace(ASKED, ''));
    then();
  };
  view.addEventListener('hashchange', look);
  look();
}

/** Opens the demo as one step that can be undone; a record that holds something stays as it is. */
export async function openDemo(record: GarageRecord, client: PlannerClient, title: string): Promise<void> {
  const bytes = new Uint8Array(await (await fetch(demoUrl)).arrayBuffer());
  const reply = await client.once({ kind: 'open', bytes, name: 'demo.garage.yaml' });
  if (reply.kind !== 'garage') throw new Error(`the demo could not be opened: ${reply.kind}`);
  if (isEmptyGarage(record.getState().garage)) await record.replace(title, reply.garage);
}

import type { Wording } from '@waymend/planner/words/wording';
import type { Answering, Asking, Reply, Request, Start } from './protocol.ts';

type OnReply = (reply: Reply, last: boolean) => void;

interface Waiting {
  readonly request: Request;
  readonly onReply: OnReply;
}

/** Requests that search; only they look at the flag, the others are done in a moment. */
const searches = ({ kind }: Request): boolean => kind === 'plan' || kind === 'curve' || kind === 'kit/sure';
/** Searches that give way to whatever else is asked. */
const patient = ({ kind }: Request): boolean => kind === 'curve' || kind === 'kit/sure';

/**
 * The page's end of the planner's one long-lived worker. A search runs without a break, so it is stopped by a flag in
 * shared memory; where the browser gives none (the page is then not isolated), the worker is ended and a new one
 * started, which costs a second or two. A curve, or how sure it all is, is patient: whatever else is asked goes first, and it starts anew after.
 */
export class PlannerClient {
  private worker: Worker | null = null;
  private readonly shared: SharedArrayBuffer | null;
  private readonly make: () => Worker;
  private counter = 0;
  private readonly waiting = new Map<number, Waiting>();

  private readonly wording: () => Wording;

  constructor(make: () => Worker, wording: () => Wording) {
    this.make = make;
    this.wording = wording;
    this.shared = crossOriginIsolated ? new SharedArrayBuffer(4) : null;
  }

  /** Starts the worker before it is needed. */
  warm(): void {
    this.live();
  }

  /** Every reply to the request in order; answers with a ticket that `stop` takes. */
  ask(request: Request, onReply: OnReply): Ticket {
    const displaced = patient(request) ? [] : this.patientOnes();
    const ticket: Ticket = { number: 0 };
    // Before the new request is posted: the flag stops what was asked before it.
    if (displaced.length > 0) this.stopUpTo(this.counter, 'again');
    this.post(ticket, request, onReply);
    for (const { ticket: later, waiting } of displaced) this.post(later, waiting.request, waiting.onReply);
    return ticket;
  }

  /** The last reply. */
  once(request: Request): Promise<Reply> {
    return new Promise((resolve) => {
      this.ask(request, (reply, last) => last && resolve(reply));
    });
  }

  /** Stops a search; it then answers with the best it has, or that it was stopped. */
  stop(ticket: Ticket): void {
    if (this.waiting.has(ticket.number)) this.stopUpTo(ticket.number, 'say');
  }

  private readonly tickets = new Map<number, Ticket>();

  private post(ticket: Ticket, request: Request, onReply: OnReply): void {
    this.counter += 1;
    ticket.number = this.counter;
    this.tickets.set(this.counter, ticket);
    this.waiting.set(this.counter, { request, onReply });
    const asking: Asking = { number: this.counter, request, wording: this.wording() };
    this.live().postMessage(asking);
  }

  private patientOnes(): { ticket: Ticket; waiting: Waiting }[] {
    const found: { ticket: Ticket; waiting: Waiting }[] = [];
    for (const [number, waiting] of this.waiting) {
      const ticket = this.tickets.get(number);
      if (!patient(waiting.request) || ticket === undefined) continue;
      this.forget(number);
      found.push({ ticket, waiting });
    }
    return found;
  }

  private stopUpTo(upTo: number, then: 'say' | 'again'): void {
    if (this.shared !== null) {
      const flag = new Int32Array(this.shared);
      Atomics.store(flag, 0, Math.max(upTo, Atomics.load(flag, 0)));
      return;
    }
    this.worker?.terminate();
    this.worker = null;
    const all = [...this.waiting].sort(([a], [b]) => a - b);
    for (const [number, { request, onReply }] of all) {
      const ticket = this.tickets.get(number) ?? { number };
      this.forget(number);
      if (then === 'say' && number <= upTo && searches(request)) onReply({ kind: 'stopped' }, true);
      else this.post(ticket, request, onReply);
    }
  }

  private forget(number: number): void {
    this.waiting.delete(number);
    this.tickets.delete(number);
  }

  private live(): Worker {
    if (this.worker !== null) return this.worker;
    const worker = this.make();
    worker.addEventListener('message', ({ data }: MessageEvent<Answering>) => {
      const waiting = this.waiting.get(data.number);
      if (data.last) this.forget(data.number);
      waiting?.onReply(data.reply, data.last);
    });
    worker.addEventListener('error', (event) => {
      const all = [...this.waiting.values()];
      this.waiting.clear();
      this.tickets.clear();
      this.worker = null;
      worker.terminate();
      for (const { onReply } of all) onReply({ kind: 'broken', cause: event.message }, true);
    });
    const start: Start = { kind: 'start', stop: this.shared };
    worker.postMessage(start);
    this.worker = worker;
    return worker;
  }
}

/** Names a request under way; its number changes when the request is put behind another. */
export interface Ticket {
  number: number;
}

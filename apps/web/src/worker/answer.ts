import type { Solver } from '@waymend/core/choosing/solver-port';
import { ok, type Refusal, type Result } from '@waymend/core/result';
import { textOfBytes } from '@waymend/garage/file/text-of-bytes';
import { readGarage } from '@waymend/garage/file/read-garage';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { bagsReply } from './bags/answer-bags.ts';
import { answerBelongings } from './belongings/answer-belongings.ts';
import { jobsReply } from './jobs/answer-jobs.ts';
import { curve } from './kit/curve.ts';
import { kit } from './kit/kit.ts';
import { planning } from './kit/planning.ts';
import { sure } from './kit/sure.ts';
import type { Reply, Request } from './protocol.ts';
import { answerTrip } from './trip/answer-trip.ts';
import { vehicleReply } from './vehicle/vehicle.ts';

export interface Errand {
  readonly solver: Solver;
  /** Counts seconds. */
  readonly clock: () => number;
  readonly stopAsked: () => boolean;
  readonly say: (reply: Reply, last: boolean) => void;
}

/** Does what one request asks, saying each reply; the last one is marked so. Knows nothing of workers. */
export async function answer(request: Request, errand: Errand): Promise<void> {
  const { say } = errand;
  switch (request.kind) {
    case 'plan':
    case 'why':
      planning(request, errand);
      return;
    case 'curve':
      curve(request, errand);
      return;
    case 'kit/sure':
      sure(request, errand);
      return;
    case 'kit/sizes':
    case 'kit/shop':
    case 'kit/renewal':
      kit(request, errand);
      return;
    case 'open': {
      const opened = await open(request.bytes, request.name);
      say(
        opened.ok ? { kind: 'garage', garage: opened.value } : { kind: 'refused', refusals: opened.error },
        true,
      );
      return;
    }
    case 'write':
      say({ kind: 'text', text: writeGarage(request.garage) }, true);
      return;
    case 'trip/start':
    case 'trip/jobs':
      say(answerTrip(request), true);
      return;
    case 'bags/things':
    case 'bags/job':
    case 'bags/changed':
    case 'bags/ready':
    case 'bags/stow':
      say(bagsReply(request, errand), true);
      return;
    case 'belongings/catalogue':
    case 'belongings/find':
    case 'belongings/read':
    case 'belongings/read-file':
    case 'belongings/make':
    case 'belongings/teach':
    case 'belongings/size':
    case 'belongings/csv':
      say(await answerBelongings(request), true);
      return;
    case 'vehicle/load':
    case 'vehicle/weigh-in':
    case 'vehicle/rail':
    case 'vehicle/cures':
    case 'vehicle/fittings':
    case 'vehicle/facts':
      say(vehicleReply(request), true);
      return;
    case 'jobs/list':
    case 'jobs/symptom':
    case 'jobs/card':
    case 'jobs/ways':
    case 'jobs/repairs':
    case 'jobs/wire':
      say(jobsReply(request), true);
      return;
  }
}

async function open(bytes: Uint8Array, name: string): Promise<Result<Garage, readonly Refusal[]>> {
  const text = await Promise.resolve(textOfBytes(bytes, name));
  if (!text.ok) return { ok: false, error: [text.error] };
  const read = readGarage(text.value, name, { for: 'edit' });
  return read.ok ? ok(read.value) : read;
}

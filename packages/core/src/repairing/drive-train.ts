import type { PieceIndex, Way } from '../choosing/problem.ts';
import type { Reach } from '../fastening/access.ts';
import type { HandleOffer } from '../fastening/drive-limit.ts';
import { chainLimit, SQUARE_DRIVES } from '../fastening/drive-limit.ts';
import type { Puller } from '../fastening/lever.ts';
import { handleLever, leverGrade, tubeLever } from '../fastening/lever.ts';
import type { Metres, NewtonMetres } from '../quantity/units.ts';
import { apart, asWays } from './apart.ts';
import { isAtLeast, worstOf } from './grade.ts';
import type { Met, NeedGraph } from './need-graph.ts';
import type { Grade, SquareDrive } from './scene.ts';
import type { Toolbox } from './toolbox.ts';

/** The least extension that gets a socket down a hole, m; a printed 100 mm counts however it was rounded. */
const LONG_ENOUGH = 0.1 - 1e-9;

/** What a socket, or the bare end of a square, asks of whatever turns it. */
export interface TrainAsk {
  readonly drive: SquareDrive;
  readonly reach: Reach;
  readonly torque: NewtonMetres;
  readonly puller: Puller;
  /** Only handles of this very drive: a square plug takes their end (M2 "Inside drives"). */
  readonly ownDrive: boolean;
}

export function trainKey(ask: TrainAsk): string {
  return `${ask.drive} ${ask.reach} ${ask.torque} ${ask.puller.stance} ${ask.ownDrive}`;
}

/**
 * Handle, at most one adapter, and extension or joint where the place asks for one (M2 "Square drives", "Lever"), as needs
 * that every socket which asks the same shares.
 */
export class DriveTrains {
  private readonly graph: NeedGraph;
  private readonly toolbox: Toolbox;
  private readonly known = new Map<string, Met>();

  constructor(graph: NeedGraph, toolbox: Toolbox) {
    this.graph = graph;
    this.toolbox = toolbox;
  }

  /** A train that undoes so much torque, at a grade or better. */
  turning(ask: TrainAsk, grade: Grade): Met {
    return this.once(`${trainKey(ask)} ${ask.puller.heaviest} ${grade}`, () =>
      this.overDrives(ask.drive, (from) => {
        if (ask.ownDrive && from !== ask.drive) return null;
        return this.reaching(
          ask.reach,
          [from, ask.drive],
          this.joining(from, ask.drive, this.pulling(from, ask, grade)),
        );
      }),
    );
  }

  /** A train that only stands still while the other side turns (M3): it must bear the torque, nobody pulls. */
  holding(drive: SquareDrive, torque: NewtonMetres): Met {
    return this.once(`hold ${drive} ${torque}`, () =>
      this.overDrives(drive, (from) => {
        const still = this.handles(from, (offer) => {
          const holds = offer.form === 'ratchet' || offer.form === 'bar' || offer.form === 't-bar';
          return holds && torque <= chainLimit(offer, [drive]);
        });
        return this.joining(from, drive, this.graph.anyPiece(still.map((h) => h.piece)));
      }),
    );
  }

  private once(key: string, build: () => Met): Met {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const need = build();
    this.known.set(key, need);
    return need;
  }

  private overDrives(drive: SquareDrive, from: (handle: SquareDrive) => Met): Met {
    const need = this.graph.any(SQUARE_DRIVES.flatMap((handle) => asWays(from(handle))));
    if (need !== null) this.graph.name(need, `something that turns a ${drive} drive`);
    return need;
  }

  private handles(
    drive: SquareDrive,
    fits: (offer: HandleOffer) => boolean,
  ): readonly { readonly piece: PieceIndex; readonly offer: HandleOffer }[] {
    return this.toolbox.of('handle').filter(({ offer }) => offer.drive === drive && fits(offer));
  }

  /** Handles of a drive that give the torque at this grade: alone, or a bar with a tube over it. */
  private pulling(from: SquareDrive, { drive, torque, puller }: TrainAsk, grade: Grade): Met {
    const ways: Way[] = [];
    for (const { piece, offer } of this.handles(from, (handle) => torque <= chainLimit(handle, [drive]))) {
      if (isAtLeast(bareGrade(offer, torque, puller), grade)) ways.push({ pieces: [piece], needs: [] });
      else if (offer.form === 'bar') {
        for (const tube of this.tubes(offer.length, torque, puller, grade))
          if (tube !== piece) ways.push({ pieces: [piece, tube], needs: [] });
      }
    }
    return this.graph.any(ways);
  }

  private tubes(bar: Metres, torque: NewtonMetres, puller: Puller, grade: Grade): readonly PieceIndex[] {
    return this.toolbox.of('lever-tube').flatMap(({ piece, offer }) => {
      const pulled = leverGrade(tubeLever(bar, offer.length), torque, puller);
      return isAtLeast(worstOf('with-care', pulled), grade) ? [piece] : [];
    });
  }

  /** Nothing between equal drives, exactly one adapter between others. */
  private joining(from: SquareDrive, to: SquareDrive, handle: Met): Met {
    if (from === to) return handle;
    const adapters = this.toolbox
      .of('adapter')
      .flatMap(({ piece, offer }) => (offer.handle === from && offer.socket === to ? [piece] : []));
    return this.graph.any(apart(this.graph, adapters, handle));
  }

  /** Extensions and joints have the drive of the socket or of the handle. */
  private reaching(reach: Reach, drives: readonly SquareDrive[], train: Met): Met {
    if (reach === 'straight') return train;
    const between = this.toolbox.of('extension').flatMap(({ piece, offer }) => {
      const reaches = reach === 'bent' ? offer.wobble : offer.length >= LONG_ENOUGH;
      return reaches && drives.includes(offer.drive) ? [piece] : [];
    });
    if (reach === 'bent') {
      for (const { piece, offer } of this.toolbox.of('joint'))
        if (drives.includes(offer.drive)) between.push(piece);
    }
    return this.graph.any(apart(this.graph, between, train));
  }
}

/** A spinner is twirled and an impact driver strikes: their own limits say all; every other handle is a lever. */
function bareGrade(offer: HandleOffer, torque: NewtonMetres, puller: Puller): Grade | null {
  if (offer.form === 'spinner' || offer.form === 'impact') return 'proper';
  return leverGrade(handleLever(offer.length), torque, puller);
}

/** Whether an extension is itself the reach a head asks for. */
export function reachLeft(reach: Reach, extension: Metres): Reach {
  return reach === 'extended' && extension >= LONG_ENOUGH ? 'straight' : reach;
}

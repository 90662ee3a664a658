import type {
  LinearModel,
  RelaxedSession,
  SolveOptions,
  Solver,
  SolverAnswer,
} from '@waymend/core/choosing/solver-port';
import loadHighs from 'highs';
import type { Highs, InitOptions } from 'highs';
import { openHighsSession } from './highs-session.ts';
import { solveOnce } from './highs-solve.ts';

/** Where the WebAssembly comes from; needed in a browser, where a bundler moves the file. */
export interface HighsLoading {
  /** Address of `highs.wasm`. */
  readonly locateFile?: (file: string) => string;
  /** Compiled beforehand, so that several solvers share one compilation. */
  readonly wasmModule?: WebAssembly.Module;
}

export interface HighsSolver extends Solver {
  openRelaxed(model: LinearModel): RelaxedSession;
  /** Resolves when a fresh copy of the module stands ready again after a trap. */
  ready(): Promise<void>;
  /** Bytes of WebAssembly memory the module holds (it never shrinks). */
  memoryBytes(): number;
}

/**
 * HiGHS (MIT licence) behind the solver port. A trap inside WebAssembly leaves the module in an unknown state, so the
 * module is thrown away and a fresh one loaded; loading is asynchronous while solving is not, therefore the solve that
 * trapped answers `failed`, and so do further ones until `ready()`.
 */
export async function createHighsSolver(loading: HighsLoading = {}): Promise<HighsSolver> {
  const options: InitOptions = {
    ...(loading.locateFile ? { locateFile: loading.locateFile } : {}),
    ...(loading.wasmModule ? { wasmModule: loading.wasmModule } : {}),
  };
  let highs: Highs | null = await loadHighs(options);
  let reloading: Promise<void> = Promise.resolve();

  const discard = (): void => {
    highs = null;
    reloading = loadHighs(options).then((fresh) => {
      highs = fresh;
    });
  };
  /** Runs `work` on the live module; a trap discards the module, any other error is a bug and is thrown. */
  const guarded = (work: (live: Highs) => SolverAnswer): SolverAnswer => {
    if (!highs) return { kind: 'failed', cause: 'the solver is being loaded anew after a trap' };
    try {
      return work(highs);
    } catch (error) {
      if (!isTrap(error)) throw error;
      discard();
      return { kind: 'failed', cause: `the solver trapped: ${String(error)}` };
    }
  };

  return {
    solve: (model: LinearModel, solveOptions: SolveOptions = {}) =>
      guarded((live) => solveOnce(live, model, solveOptions)),
    openRelaxed: (model) => openHighsSession(() => highs, guarded, model),
    ready: () => reloading,
    memoryBytes: () => highs?.memoryBytes ?? 0,
  };
}

/** WebAssembly traps and Emscripten aborts are RuntimeErrors; running out of memory can also be a RangeError. */
function isTrap(error: unknown): boolean {
  return error instanceof Error && (error.name === 'RuntimeError' || error instanceof RangeError);
}

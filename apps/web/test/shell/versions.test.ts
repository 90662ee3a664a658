import { describe, expect, test, vi } from 'vitest';
import type { VersionPort, Versions } from '../../src/shell/versions.ts';
import { watchVersions } from '../../src/shell/versions.ts';

/** A browser's side of it, played: events of the container and of the registration are fired by hand. */
class Registration extends EventTarget {
  waiting: unknown = null;
  active: unknown = null;
  installing: Worker | null = null;
  readonly update = vi.fn(() => Promise.resolve());
}

class Worker extends EventTarget {
  state = 'installing';
  readonly postMessage = vi.fn();
}

class Container extends EventTarget {
  controller: object | null = null;
  readonly registration = new Registration();
  readonly register = vi.fn(() => Promise.resolve(this.registration));
  readonly ready = Promise.resolve(this.registration);
}

interface Played {
  readonly container: Container;
  readonly versions: Versions;
  readonly reload: ReturnType<typeof vi.fn>;
  readonly nextPlace: () => void;
  readonly comeBack: () => void;
}

async function play(controlled: boolean): Promise<Played> {
  const container = new Container();
  if (controlled) {
    container.controller = {};
    container.registration.active = {};
  }
  const reload = vi.fn();
  const atPlace: (() => void)[] = [];
  const onReturn: (() => void)[] = [];
  const port: VersionPort = {
    // What the port needs of a container is played in full above.
    container: container as unknown as ServiceWorkerContainer,
    reload,
    atNextPlace: (then) => atPlace.push(then),
    onReturn: (then) => onReturn.push(then),
  };
  const versions = watchVersions(port);
  await new Promise((resolve) => setTimeout(resolve, 0));
  return {
    container,
    versions,
    reload,
    nextPlace: () => atPlace.splice(0).forEach((then) => then()),
    comeBack: () => onReturn.forEach((then) => then()),
  };
}

function install({ container }: Played): Worker {
  const worker = new Worker();
  container.registration.installing = worker;
  container.registration.dispatchEvent(new Event('updatefound'));
  worker.state = 'installed';
  worker.dispatchEvent(new Event('statechange'));
  return worker;
}

describe('versions of the page', () => {
  test('works without signal once the cache is filled', async () => {
    const played = await play(false);
    expect(played.versions.getState()).toEqual({ offline: true, newer: 'none' });
  });

  test('the first version of all takes over from nobody: no reload, nothing offered', async () => {
    const played = await play(false);
    install(played);
    played.container.dispatchEvent(new Event('controllerchange'));
    played.nextPlace();
    expect(played.reload).not.toHaveBeenCalled();
    expect(played.versions.getState().newer).toBe('none');
  });

  test('a newer version shows at the next place, not before, and starts only when taken', async () => {
    const played = await play(true);
    const worker = install(played);
    expect(played.versions.getState().newer).toBe('none');
    played.nextPlace();
    expect(played.versions.getState().newer).toBe('waiting');
    expect(worker.postMessage).not.toHaveBeenCalled();

    played.versions.take();
    expect(worker.postMessage).toHaveBeenCalledWith({ type: 'SKIP_WAITING' });
    expect(played.reload).not.toHaveBeenCalled();
    played.container.dispatchEvent(new Event('controllerchange'));
    expect(played.reload).toHaveBeenCalledOnce();
  });

  test('a tab is not reloaded when another tab takes the newer version; it is told', async () => {
    const played = await play(true);
    install(played);
    played.container.dispatchEvent(new Event('controllerchange'));
    expect(played.reload).not.toHaveBeenCalled();
    played.nextPlace();
    expect(played.versions.getState().newer).toBe('elsewhere');
    played.versions.take();
    expect(played.reload).toHaveBeenCalledOnce();
  });

  test('asks for a newer one when the page is looked at again', async () => {
    const played = await play(true);
    played.comeBack();
    expect(played.container.registration.update).toHaveBeenCalledOnce();
  });

  test('a browser that keeps nothing is no error', () => {
    const versions = watchVersions({
      container: null,
      reload: () => undefined,
      atNextPlace: () => undefined,
      onReturn: () => undefined,
    });
    expect(versions.getState()).toEqual({ offline: false, newer: 'none' });
  });
});

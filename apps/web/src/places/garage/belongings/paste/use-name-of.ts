import { useCatalogue } from '../use-catalogue.ts';

/** 'deep socket, six-point, 17 mm, 1/2 in drive' of an id, or the title of a set. */
export function useNameOf(): (id: string) => string {
  const catalogue = useCatalogue();
  return (id) => {
    const line = catalogue?.byId.get(id);
    if (line === undefined) return catalogue?.setById.get(id)?.title ?? id;
    return line.size === null ? line.name : `${line.name}, ${line.size}`;
  };
}

import { useCatalogue } from '../use-catalogue.ts';

/** 'deep socket, six-point, 17 mm, 1/2 in drive' of an id. */
export function useNameOf(): (id: string) => string {
  const catalogue = useCatalogue();
  return (id) => {
    const line = catalogue?.byId.get(id);
    if (line === undefined) return id;
    return line.size === null ? line.name : `${line.name}, ${line.size}`;
  };
}

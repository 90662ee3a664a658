import { usePlan } from '../../shell/stores.tsx';

export function KitPlace() {
  const { answer, curve, seconds } = usePlan();
  return (
    <>
      <h1>{answer?.unaided.words ?? ''}</h1>
      <p>{seconds}</p>
      <p>{curve.length}</p>
    </>
  );
}

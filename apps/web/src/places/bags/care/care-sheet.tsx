export function CareSheet() {
  return <h1>Care</h1>;
}

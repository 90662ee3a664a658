export function MapSheet() {
  return <h1>Map</h1>;
}

export function VehiclePlace() {
  return <h1>Vehicle</h1>;
}

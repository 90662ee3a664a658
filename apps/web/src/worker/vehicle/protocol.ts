/** What the vehicle screens ask of the worker, and what it replies; each kind starts with 'vehicle/'. */
export type VehicleRequest = never;

export type VehicleReply = never;

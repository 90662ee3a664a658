/** What the trip screens ask of the worker, and what it replies; each kind starts with 'trip/'. */
export type TripRequest = never;

export type TripReply = never;

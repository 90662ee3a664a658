/** What the belongings screens ask of the worker, and what it replies; each kind starts with 'belongings/'. */
export type BelongingsRequest = never;

export type BelongingsReply = never;

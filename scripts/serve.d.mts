import type { Server } from 'node:http';

export function serve(folder: string, port?: number): Promise<{ readonly server: Server; readonly address: string }>;

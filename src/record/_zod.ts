import { config } from 'zod/mini';

// A record is read once or a thousand times, never a million: generating code for its schemas costs more than it saves.
config({ jitless: true });

export * from 'zod/mini';

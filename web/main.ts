import { openEarly } from './early-socket.ts';

const early = openEarly();
void import('./start.tsx').then(({ start }) => start(early));

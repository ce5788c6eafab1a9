/** Version of the socket protocol; a client of another version is told to reload. */
export const protocolVersion = 2;

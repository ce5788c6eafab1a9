/** Style sheets are imported for their effect; the build makes a file of each chunk's. */
declare module '*.css';

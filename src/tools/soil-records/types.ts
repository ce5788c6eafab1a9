/** One day of a station's record; null is missing. */
export interface RecordDay {
  /** Days since 1970-01-01. */
  readonly day: number;
  /** Mean air temperature of the day, C. */
  readonly airC: number | null;
  /** Soil temperature at the record's depth, C. */
  readonly soilC: number | null;
}

/** A station's days without a hole, by form of the file that they came from. */
export interface SoilRecord {
  readonly station: string;
  /** Publisher and form of the file. */
  readonly source: string;
  readonly latitudeDeg: number | null;
  readonly depthM: number;
  readonly days: readonly RecordDay[];
}

/** A file of a folder, read whole. */
export interface RecordFile {
  readonly path: string;
  readonly text: string;
}

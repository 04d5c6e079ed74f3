// What the report's scripts give the page as a module (src/BracketGen.Drawing/Report/Page).
export function sweepMotion(data: Report.SweepData): Report.Motion;
export function solidPicture(data: Report.SolidData, motion: Report.Motion): Report.SolidPicture | (() => void);
export function sweepPicture(motion: Report.Motion, onMove: (pose: Report.Pose) => void, start: number): Report.SweepPicture | null;
export function chartReaders(): void;

declare global {
  namespace Report {
    /** Positions of the sweep; only the report's scripts look inside. */
    type SweepData = { readonly turns: number[] };
    type Pose = { readonly turn: number };
    type Motion = { at(place: number): Pose };
    /** What the picture of the bracket is drawn from; the shell is there once strength is calculated. */
    type SolidData = { readonly shell?: object | null };
    type SolidPicture = { (pose: Pose): void; change(data: SolidData, motion: Motion): void; paint(): void };
    type SweepPicture = { stop(): void; pedal(): number };
  }
}

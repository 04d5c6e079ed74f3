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
    type SolidData = { readonly shell?: object | null, readonly parts: { kind: string, points: number[], edges: number[] }[] };
    /** Lines that are laid over the picture: six numbers each, mm. */
    type Outline = { ends: number[], colour: string };
    type SolidPicture = {
      (pose: Pose): void; change(data: SolidData, motion: Motion): void; paint(): void; outline(next: Outline[]): void;
      /** A plane by its normal and its distance along it; what lies between it and the eye is not drawn. */
      cut(plane: number[] | null): void;
      /** Is told after each frame. */
      watch(told: () => void): void;
      /** Where a point is on the canvas (px). */
      place(point: number[]): number[];
    };
    type SweepPicture = { stop(): void; pedal(): number };
  }
}

// What the report's scripts pass to each other and what the page's data holds (src/BracketGen.Drawing/Report/PageData.cs). Lengths in mm, angles in degrees.
declare namespace Picture {
  /** Positions of the sweep; points two numbers each, in the picture's plane. */
  interface SweepData { turns: number[], wraps: number[], from: number[], seat: number[], groove: number[], grooveStep: number, pedal: number[] }
  interface Pose { nearest: number, turn: number, wrap: number, from: number[] }
  interface Motion { at(place: number): Pose, wire(pose: Pose): number[][], placeOf(part: number): number }

  type Kind = 'sheet' | 'mount' | 'shaft' | 'fitting' | 'outer' | 'casting' | 'valve' | 'moving' | 'keepout';
  /** Points three numbers each; triangles and edges are places in them. */
  interface Part { kind: Kind, turns: boolean, points: number[], triangles: number[], edges: number[] }
  interface Shell { points: number[], triangles: number[], stress: number[], swing: number[], bands: string[] }
  interface SolidData { parts: Part[], shell?: Shell | null, least: number[], most: number[] }
  type Follow = { (pose: Pose): void, change(next: SolidData, itsMotion: Motion): void, paint(): void,
    outline(next: Outline[]): void, cut(next: number[] | null): void, watch(told: () => void): void, place(point: number[]): number[] };
  /** Lines that are laid over the picture: six numbers each. */
  interface Outline { ends: number[], colour: string }

  interface LoadedPart { kind: Kind, turns: boolean, faces: WebGLBuffer, faceCount: number, lines: WebGLBuffer, lineCount: number }
  interface LoadedShell { count: number, points: WebGLBuffer, swing: WebGLBuffer, stress: WebGLBuffer, movement: WebGLBuffer, bands: Float32Array }
  interface Camera { view: Float32Array, centre: number[], scale: number[], cut: number[] }

  /** What surface.js draws with. */
  interface Surface {
    buffer(values: Float32Array): WebGLBuffer;
    begin(width: number, height: number): void;
    faces(points: WebGLBuffer, count: number, camera: Camera, turn: number, ink: number[]): void;
    lines(ends: WebGLBuffer, count: number, camera: Camera, turn: number, ink: number[], width: number, nearer: number): void;
    painted(points: WebGLBuffer, moved: WebGLBuffer, values: WebGLBuffer, count: number, camera: Camera, sway: number, bands: Float32Array): void;
    remove(old: WebGLBuffer): void;
  }
}

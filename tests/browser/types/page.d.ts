// What the page's modules pass to each other and what the server sends them.
interface Window {
  /** Where the browser has them (W3C, Trusted Types). */
  readonly trustedTypes?: { createPolicy(name: string, rules: { createHTML(text: string): string }): { createHTML(text: string): unknown } };
}

declare namespace Page {
  /** What may stand inside an element. */
  type Child = Node | string | null | undefined | false | Child[];

  /** What a profile holds, parsed; it may hold anything. */
  type Values = Record<string, any>;

  /** Texts by section and name, units by the profile's own. */
  interface WordsDocument {
    words: Record<string, Record<string, string>>;
    units: { metric: string, inch: string, factor: number }[];
  }

  /** A part of a JSON Schema as the program writes them. */
  interface Schema {
    type?: string;
    properties?: Record<string, Schema>;
    required?: string[];
    oneOf?: Schema[];
    anyOf?: Schema[];
    items?: Schema;
    prefixItems?: Schema[];
    enum?: string[];
    const?: string;
    default?: any;
    description?: string;
    pattern?: string;
    title?: string;
    minItems?: number;
    maxItems?: number;
    minimum?: number;
    maximum?: number;
  }

  interface Role { id: string, key: string | null, label: string, form: string, kind: string }

  interface ShelfEntry { path: string, kind: string, name: string, problem: string | null }
  interface Shelf { folder: string, profiles: ShelfEntry[], examples: ShelfEntry[], drawings: string[], unsaved: string[] }

  /** A bracket that is there already: its file, and its drawing where it names one. */
  interface Bracket { path: string, files: Record<string, string>, values: Record<string, Values> }

  interface Opened { job: string, files: Record<string, string>, values: Record<string, Values>, unsaved?: Record<string, string>, isSaved?: boolean }
  interface Step extends Opened { bracket: string }

  /** One value changed; null removes the key. */
  interface Change { key: string, value: any }
  interface Edit extends Change { file: string }

  interface Problem { file: string, line: number, key: string, missing: boolean, open: boolean, allowed: string, advice: string, text: string }

  /** What in the picture has a name, and which numbers can be seen in it; mm. */
  interface Marks {
    things: Thing[];
    dimensions: Dimension[];
    /** A point on the stop's axis, and the axis. */
    stop: number[];
  }
  interface Thing { kind: 'shaft' | 'quadrant' | 'stop' | 'hole' | 'keepout', name: string, at: number[], key: string, moves: string[], normal: number[] | null }
  interface Dimension { role: string, key: string, axis: number, name: string, from: number[], to: number[] }

  interface Verdict { state: 'unsafe' | 'fails' | 'not-proven' | 'passes', word: string, sentence: string }

  interface Answer {
    depth: 'Quick' | 'Remedies' | 'Strength';
    isWhole: boolean;
    isChosen: boolean;
    chosenText: string | null;
    choices: Values[];
    verdict: Verdict;
    /** How many checks fail. */
    failed: number;
    hasBracket: boolean;
    hasStrength: boolean;
    dangers: { id: string, title: string }[];
    /** What of the throttle body is drawn, and what is not. */
    about: string;
    /** Null where there is no bracket to show. */
    marks: Marks | null;
    /** Edges of each of the choices, six numbers a line; empty before strength is calculated. */
    outlines?: number[][];
    /** Markup of each section. */
    parts: Record<string, string>;
    /** Sections that were not asked for: what is shown of them is of an answer before. */
    open?: string[];
    /** Null where nothing was solved. */
    data: { solid: Report.SolidData | null, sweep: Report.SweepData } | null;
    /** The row of the table that compares brackets, and its heads, where strength is calculated. */
    row?: string[];
    heads?: string[];
  }

  /** A reply that names what the page has by its mark: the keys that lead to each piece, and the mark. */
  interface Lean { new?: string[][], same?: string[][] }
  interface Reply extends Opened, Lean { errors: Problem[], refused: string[], solveTime: number, answer: Answer | null }

  /** What stands in a field, and the unit beside it. */
  interface Shown { text: string, unit: string }

  /** A field or a group of them. */
  interface Field {
    kind: 'group' | 'list' | 'quantity' | 'vector' | 'word' | 'text' | 'items' | 'drawing';
    path: string;
    label: string;
    help: string;
    default: any;
    isRequired: boolean;
    unit: string;
    words: string[];
    nodes: Field[];
    /** Whether a group is in the profile. */
    isThere: boolean;
    isItem?: boolean;
    isText?: boolean;
    isMeasured?: boolean;
    pattern?: string;
    /** Of a vector: the names of its numbers, and how many of them are needed. */
    axes?: string[];
    needed?: number;
    /** Of a list: items now, maximum, schema of an item. */
    count?: number;
    maxCount?: number;
    item?: Schema;
    /** Of a word that says which kind of thing its owner is. */
    kinds?: { word: string, form: Schema }[];
    owner?: string;
  }

  /** What fields are called, by their keys. */
  type Naming = Record<string, string>;

  /** What the fields of a profile know. */
  interface Form {
    values: Values;
    inInches: boolean;
    change(changes: Change[], what: string | null): void;
    leave(): void;
    /** Whether an edit of a key is still to be sent. */
    isPending(key: string): boolean;
    /** Drawings that a bracket can name, as it names them. */
    drawings(): string[];
    /** Takes a drawing that was chosen or dropped. */
    take(key: string, name: string, content: string): void;
  }

  interface Inputs { inputs: (HTMLInputElement | HTMLSelectElement)[], parts: HTMLElement[], fill(written: any): void }
  interface DrawnField { n: Field, problem: HTMLElement, inputs: Inputs['inputs'], fill: Inputs['fill'] }
  interface Fields { fill(values: Values, inInches: boolean): void, problems(errors: Problem[]): Problem[] }

  /** A profile of a new job: picked from the folder or the examples, or to be measured under a name. */
  interface Source { source: string, name: string, slug: string }
  interface Wish { body: Source, vehicle: Source, shop: Source }
  interface ToMeasure { path: string, kind: string, label: string }

  interface MeasuringWish {
    desk: import('../../../src/BracketGen.Web/Page/desk.js').Desk;
    profiles: ToMeasure[];
    unitOf(kind: string, key: string): string;
    done(): void;
    leave(): void;
    /** Whether something was measured before: it goes on where something is open. */
    isAgain: boolean;
  }

  interface MeasuringScreen { title: string, sketch: number, steps: number[] }
  interface MeasuringReply { steps: MeasuringStep[], screens: MeasuringScreen[], part: string, place: number[] }
  interface MeasuringRow {
    s: MeasuringStep;
    element: HTMLElement;
    problem: HTMLElement;
    state: HTMLElement;
    tell(told: string): void;
    fill(written: any): void;
  }

  /** What the fields of the measuring screens know. */
  interface MeasuringForm extends Form {
    /** What the profile holds under a key. */
    written(key: string): any;
  }

  interface MeasuringStep {
    key: string;
    form: 'Quantity' | 'Measured' | 'Text' | 'Word' | 'Point' | 'Count';
    ask: string;
    explain: string;
    default: string | null;
    words: string[];
    max: number;
    sketch: number;
    letter: string;
    tool: string;
    mistake: string;
  }

  /** Something to click in a photograph. */
  interface PhotoThing { label: string, isCurrent: boolean, clicks: number[][] }
  interface PhotoPart { id: string, label: string, short: string }
  interface PhotoWish {
    desk: import('../../../src/BracketGen.Web/Page/desk.js').Desk;
    path: string;
    done(told: string): void;
    onProblem(problem: unknown): void;
  }
  interface PhotoOverlay { what: string, line: number[] }
  interface PhotoReading { label: string, text: string, changes: Change[] }
  interface PhotoReply { problem: string | null, about: string[], readings: PhotoReading[], overlays: PhotoOverlay[], grid: PhotoGrid }
  /** Where the photograph shows a square grid about the shaft, mm, row by row; pairs of pixels. */
  interface PhotoGrid { half: number, count: number, seen: number[] }
  /** The photograph square-on: a picture, and half its side (mm). */
  interface Underlay { url: string, half: number }
  interface PhotoState {
    picture: ImageBitmap | null;
    clicks: Record<string, number[][]>;
    lengths: Record<string, { value: string, plusMinus: string }>;
    choices: Record<string, boolean>;
    reply: PhotoReply | null;
    /** Made when it is first shown. */
    underlay?: { of: PhotoReply, made: Underlay };
    current: string;
  }

  /** What the command kit says. */
  interface KitReply {
    errors: Problem[];
    answer: {
      state: string, heading: string, verdict: string, noLists: string | null, set: string, heads: string[], rows: string[][], account: string[],
      lists: { heading: string, lines: string[] }[], files: string[],
    } | null;
  }

  /** What readings on the fitted bracket mean. */
  interface FittedReply {
    errors: Problem[];
    mistakes: Record<string, string>;
    problem: string | null;
    answer: { state: string, heading: string, rows: string[][], verdict: string } | null;
  }

  /** What test strips come to. */
  interface TestBendReply {
    errors: Problem[];
    stock?: string[];
    tools?: string[];
    problem?: string | null;
    answer?: { state: string, heading: string, rows: string[][], told: string[], k?: number, edit?: Change };
  }

  /** A variant of a product line. */
  interface LineCell { key: string, title: string, state: string, word: string, why: string[], isOpen: boolean }

  /** How far a run has come; ended where there is none. */
  interface LineRunState { isRunning: boolean, progress: string, done: number, of: number, output: string, errors: string }

  /** A product line as it is in the folder. */
  interface LineReply {
    errors: Problem[];
    name?: string;
    outcome?: string;
    place?: string;
    columns?: string[];
    rows?: { name: string, cells: LineCell[] }[];
    run?: LineRunState | null;
  }
}

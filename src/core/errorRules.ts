/*
 * The rules that an input may break and that neither a kind, a range, a format nor a list of values says.
 * Each names what its sentence is made from, so that a language is complete by type.
 */
/** Where a characteristic curve ends too early; with neither, it runs level. */
export interface CurveEnd {
  /** the density that it starts at, too high */
  readonly startsAt?: number | undefined;
  /** the density that it ends at, too low */
  readonly endsAt?: number | undefined;
}

/** What the sentence of each rule names besides the value that was given. */
export interface InputRules {
  /** a field that is not read */
  readonly "known-field": {
    /** the fields that are read */
    readonly values: readonly string[];
    /** the one that is nearest to it */
    readonly hint?: string | undefined;
  };
  /** a figure that is not above the one before it in a list */
  readonly "rising": {
    /** the one before */
    readonly above: number;
  };
  /** more taken out of a bath than it holds */
  readonly "below-held": {
    /** what it holds, ml */
    readonly below: number;
  };
  /** a document of a version that is not read yet */
  readonly "known-version": Most;
  /** text that is no JSON */
  readonly "json": {
    /** the line of the first fault, from 1 */
    readonly line: number;
    /** its place in that line, from 1 */
    readonly column: number;
  };
  /** a name that an object of a JSON text has twice */
  readonly "once": {
    /** the line where it comes again, from 1 */
    readonly line: number;
    /** its place in that line, from 1 */
    readonly column: number;
  };
  /** minutes or seconds of 60 and more on a clock */
  readonly "below-60": object;
  /** sides of a film format that no plate has */
  readonly "sides-at-most": Most;
  /** a date in the future */
  readonly "not-after": {
    /** today's ISO date */
    readonly today: string;
  };
  /** fewer items than are needed where another figure is not given */
  readonly "enough-without": {
    /** how many are needed */
    readonly least: number;
    /** the figure that would spare one: a JSON Pointer */
    readonly path: string;
  };
  /** rows of a table at one place, or times that fall with temperature or concentration, or rise too fast */
  readonly "rows-slower": {
    /** two rows that break the rule */
    readonly rows: readonly {
      /** the place of the row */
      readonly at: unknown;
      /** its time, s */
      readonly timeS: number;
    }[];
    /** the field that places a row */
    readonly by: "temperatureC" | "dilution";
  };
  /** a spread of ln(time) that is too wide */
  readonly "spread-at-most": Most;
  /** a bath that slows too much */
  readonly "slowing-at-most": Most;
  /** an exponent that no dilution shows */
  readonly "exponent-at-most": Most;
  /** a temperature in °C that looks like one in °F */
  readonly "not-fahrenheit": Most;
  /** an activation energy that no development shows, kJ/mol */
  readonly "energy-at-most": Most;
  /** an age past the life of the bath */
  readonly "within-life": Most;
  /** runs of more people, thermometers, days and conditions than can be told apart */
  readonly "told-apart": Most;
  /** a gradient at or past the limit of growth */
  readonly "below-top": Most;
  /** a gradient after twice the time that is no growth toward a limit */
  readonly "between-once-and-twice": {
    /** the gradient after the single time */
    readonly above: number;
  };
  /** a time of appearance after the first point */
  readonly "before-first-point": {
    /** the time of the first point, s */
    readonly below: number;
  };
  /** points at one time */
  readonly "points-differ": {
    /** the time, s */
    readonly timeS: number;
  };
  /** a gradient that falls with time */
  readonly "points-rise": {
    /** the two points */
    readonly points: readonly {
      /** its time, s */
      readonly timeS: number;
      /** its gradient */
      readonly gamma: number;
    }[];
  };
  /** points of which some have a spread and some not */
  readonly "points-all-sd": object;
  /** points that do not bend toward a limit */
  readonly "points-bend": object;
  /** points that leave a limit or rate less certain than itself */
  readonly "points-carry": object;
  /** steps of a wedge at one exposure */
  readonly "steps-differ": {
    /** their log exposure */
    readonly logH: number;
  };
  /** a curve that misses the speed point */
  readonly "curve-speed-point": CurveEnd & {
    /** the density of the speed point */
    readonly density: number;
  };
  /** a curve that does not rise from base plus fog */
  readonly "curve-rises": CurveEnd;
  /** a curve that misses the outer arc of the contrast index */
  readonly "curve-outer-arc": CurveEnd;
  /** a curve that ends before 1.30 above the speed point */
  readonly "curve-reaches": {
    /** the log exposure that is wanted */
    readonly logH: number;
    /** the last one */
    readonly lastLogH: number;
  };
  /** an estimate that lies outside its interval */
  readonly "in-order": {
    /** lower end, s */
    readonly lowS: number;
    /** the time, s */
    readonly timeS: number;
    /** upper end, s */
    readonly highS: number;
  };
  /** more agitations than anybody counts */
  readonly "agitations-at-most": {
    /** the most that is counted */
    readonly most: number;
    /** the time that they fall in, s */
    readonly timeS: number;
  };
  /** a field beside another that says the same */
  readonly "left-out-beside": {
    /** the other: a JSON Pointer */
    readonly path: string;
  };
  /** the grade of an ingredient that has none */
  readonly "no-grades": object;
  /** a family whose least stock was not published */
  readonly "family-or-least": {
    /** the families that are known */
    readonly values: readonly string[];
  };
  /** an ingredient that spoils every bath */
  readonly "fit-for-bath": {
    /** its name */
    readonly ingredient: string;
  };
  /** tablets without their label */
  readonly "label-needed": object;
  /** tablets by the spoon */
  readonly "not-tablets": object;
  /** what burns, by the spoon */
  readonly "not-caustic": object;
  /** more coffee than there is bath */
  readonly "coffee-per-ml": object;
  /** nothing dry in the bath, or more than dissolves */
  readonly "dry-per-ml": object;
  /** a brew in which nothing develops */
  readonly "agent-needed": object;
  /** a step of judgement that half of people mean the other way */
  readonly "over-or-under": {
    /** the ways to write it: those for over, then as many for under */
    readonly readings: readonly string[];
  };
  /** parts with a colon or its like between them, which are read in two ways */
  readonly "parts-or-total": {
    /** so many parts and so many of water; then so many of all parts, where there can be such a bath */
    readonly readings: readonly string[];
  };
  /** an amount of film without the volume of its bath */
  readonly "volume-needed": object;
  /** a word that may be about the development or about what was photographed */
  readonly "process-or-subject": {
    /** the two ways to write it */
    readonly readings: readonly string[];
  };
  /** a row of notes that says the same run as another */
  readonly "other-run": {
    /** the other row, from 1 */
    readonly row: number;
  };
  /** an id of two runs */
  readonly "id-of-one-run": {
    /** the row of the other, from 1, where it is a row */
    readonly row?: number | undefined;
  };
  /** two columns that say one thing */
  readonly "one-column": {
    /** their headings */
    readonly headings: readonly string[];
  };
  /** knowledge of another prior */
  readonly "same-prior": object;
  /** correlations that were rounded or changed */
  readonly "as-learned": object;
  /** conditions that no run can be compared with */
  readonly "place-in-model": {
    /** why */
    readonly reason: string;
  };
  /** a bath that no pouring in brings to the target */
  readonly "within-reach": object;
  /** air that freezes the bath */
  readonly "not-freezing": {
    /** within how long, s */
    readonly timeS: number;
  };
  /** a course that is told otherwise each time that it is asked */
  readonly "smooth": {
    /** how many steps were taken */
    readonly steps: number;
  };
  /** work that no clock reaches */
  readonly "reached-by": Most;
  /** a log that does not tell the time constant */
  readonly "tells-time-constant": {
    /** why not */
    readonly why: "straight" | "uncertain" | "too-long" | "outside";
  };
  /** a prefix that no document takes as a name */
  readonly "name": object;
  /** nesting that is too deep, or no plain data */
  readonly "plain-data": object;
}

interface Most {
  /** the most that is taken */
  readonly max: number;
}

/** The name of a rule. */
export type InputRule = keyof InputRules;

/** What a rule wants, in one language: what follows "must be". */
export type InputWanted<Rule extends InputRule> = (expected: InputRules[Rule], actual: unknown) => string;

/** What each rule wants. */
export type InputRuleTexts = { readonly [Rule in InputRule]: InputWanted<Rule> };

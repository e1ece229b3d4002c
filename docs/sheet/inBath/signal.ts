/* Cues that are heard or felt, for a screen that nobody looks at. Where neither is to be had, nothing happens. */
import type { PlanCue } from "darkroom-kinetics";

/** Lengths of the tones and of the rests between them, ms, beginning with a tone. */
const PATTERNS = {
  begin: [1200],
  move: [150],
  end: [600, 200, 600, 200, 600],
  next: [150, 150, 150],
} as const;

/** What is called out for a cue. */
export function patternOf({ do: what }: PlanCue): readonly number[] {
  if (what === "pour-in") return PATTERNS.begin;
  if (what === "agitate") return PATTERNS.move;
  return what === "pour-out" ? PATTERNS.end : PATTERNS.next;
}

let context: AudioContext | undefined;

export const canSound = (): boolean => typeof AudioContext === "function";
export const canBuzz = (): boolean => typeof navigator !== "undefined" && "vibrate" in navigator;

/** Browsers let a page sound only after it was touched: this is called then. */
export function wake(): void {
  if (!canSound()) return;
  context ??= new AudioContext();
  void context.resume();
}

/** Plays a pattern. */
export function sound(pattern: readonly number[]): void {
  wake();
  if (context === undefined) return;
  let at = context.currentTime;
  pattern.forEach((lengthMs, i) => {
    if (i % 2 === 0) tone(context as AudioContext, at, lengthMs / 1000);
    at += lengthMs / 1000;
  });
}

function tone(over: AudioContext, from: number, lengthS: number): void {
  const source = over.createOscillator();
  const level = over.createGain();
  source.frequency.value = 880;
  // Not at once, and not to the end: a hard edge clicks.
  level.gain.setValueAtTime(0, from);
  level.gain.linearRampToValueAtTime(0.4, from + 0.02);
  level.gain.setValueAtTime(0.4, from + lengthS - 0.03);
  level.gain.linearRampToValueAtTime(0, from + lengthS);
  source.connect(level).connect(over.destination);
  source.start(from);
  source.stop(from + lengthS);
}

/** Vibrates a pattern. */
export function buzz(pattern: readonly number[]): void {
  if (canBuzz()) navigator.vibrate([...pattern]);
}

/** A coil or guard over the wire in its loop. */
import type { Component } from '../component.ts';
import { takes } from '../../geometry/packing.ts';

export type GuardCheck = {
  readonly guard: string;
  readonly holeMm: number;
  /** One wire runs through it. */
  readonly needMm: number;
  readonly passes: boolean;
};

/** Whether a guard takes the wire. It covers the loop once, so one wire. */
export function checkGuard(guard: Component, wireMm: number): GuardCheck {
  return { guard: guard.id, holeMm: guard.holeMm, needMm: wireMm, passes: takes(guard.holeMm, wireMm) };
}

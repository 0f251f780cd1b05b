import type { Db, Hertz, Ratio } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";
import { dbToGain } from "./level-calibration.ts";
import type { NoteMaker } from "./note-maker.ts";
import type { NoteSpec } from "./note-spec.ts";
import type { NoteVoice } from "./note-voice.ts";
import { onsetScatter, seedFrom } from "./player-scatter.ts";
import { Room, ROOM_BLOCK_FRAMES, roomShares } from "./room.ts";
import type { SoundEvent, SoundPlan, StageSeat } from "./sound-plan-types.ts";

const SPEED_OF_SOUND_M_PER_S = 343;
/** Sound from this near needs no extra time. */
const NEAREST_M = 2;
/** How much of the width between the sides is kept on the way into the room. */
const ROOM_WIDTH = 0.6;

/** A seat without its owner. */
type Place = Omit<StageSeat, "playerId">;

const MIDDLE: Place = Object.freeze({ pan: 0, distanceM: NEAREST_M });

/** A note on its way to the listener. */
interface Channel {
  readonly event: SoundEvent;
  readonly seed: number;
  readonly start: Frames;
  readonly left: Ratio;
  readonly right: Ratio;
  readonly row: Row;
}

/** Players at one distance: they share the division between direct sound and room. */
interface Row {
  readonly distanceM: Ratio;
  readonly left: Float32Array;
  readonly right: Float32Array;
}

/** Sums the players of a plan on their seats, and the room's answer to them, piece by piece. */
export class StageMixer {
  /** From the start of the plan until the room is silent. */
  readonly frames: Frames;
  private readonly channels: readonly Channel[];
  private readonly rows: Row[] = [];
  private readonly playing = new Map<Channel, NoteVoice>();
  private readonly room: Room | undefined;
  private readonly sends = [
    new Float32Array(ROOM_BLOCK_FRAMES),
    new Float32Array(ROOM_BLOCK_FRAMES),
  ] as const;
  private next = 0;
  private at: Frames = 0;

  /**
   * @param plan - what sounds when
   * @param maker - makes the dry notes
   * @param options - level change of everything; `isDry` leaves the room out
   */
  constructor(
    plan: SoundPlan,
    private readonly maker: NoteMaker,
    options: { readonly gain: Db; readonly isDry: boolean },
  ) {
    const { sampleRate } = maker;
    this.room = options.isDry ? undefined : new Room(sampleRate);
    const seats = new Map(plan.seats.map((seat) => [seat.playerId, seat]));
    this.channels = plan.events
      .map((event) => {
        const seat = seats.get(event.playerId) ?? MIDDLE;
        const row = this.rowAt(seat.distanceM);
        return channelOf(event, plan, sampleRate, { gain: options.gain, seat, row });
      })
      .sort((a, b) => a.start - b.start);
    this.frames = this.wholeLength(sampleRate);
  }

  /**
   * Mixes the next frames.
   * @param left - filled from its start
   * @param right - filled from its start, same length
   */
  render(left: Float32Array, right: Float32Array): void {
    for (let from = 0; from < left.length; from += ROOM_BLOCK_FRAMES) {
      const frames = Math.min(ROOM_BLOCK_FRAMES, left.length - from);
      this.openUntil(this.at + frames);
      for (const row of this.rows) {
        row.left.fill(0);
        row.right.fill(0);
      }
      for (const [channel, voice] of this.playing) {
        this.addVoice(channel, voice, frames);
        if (channel.start + voice.samples.length <= this.at + frames) this.playing.delete(channel);
      }
      for (const send of this.sends) send.fill(0);
      for (const row of this.rows) this.addRow(row, [left, right], from, frames);
      this.room?.addTo(this.sends, [left, right], from, frames);
      this.at += frames;
    }
  }

  private rowAt(distanceM: Ratio): Row {
    const found = this.rows.find((row) => row.distanceM === distanceM);
    if (found) return found;
    const silence = (): Float32Array => new Float32Array(ROOM_BLOCK_FRAMES);
    const row = { distanceM, left: silence(), right: silence() };
    this.rows.push(row);
    return row;
  }

  private openUntil(frame: Frames): void {
    for (; this.next < this.channels.length; this.next++) {
      const channel = this.channels[this.next]!;
      if (channel.start >= frame) return;
      this.playing.set(channel, this.voiceOf(channel));
    }
  }

  private voiceOf(channel: Channel): NoteVoice {
    return this.maker.note(specOf(channel));
  }

  private addVoice(channel: Channel, voice: NoteVoice, frames: Frames): void {
    const first = Math.max(0, channel.start - this.at);
    const shift = this.at - channel.start;
    const end = Math.min(frames, voice.samples.length - shift);
    voice.renderTo(end + shift);
    const { samples } = voice;
    const { left: leftGain, right: rightGain } = channel;
    const { left, right } = channel.row;
    for (let i = first; i < end; i++) {
      const sample = samples[i + shift]!;
      left[i] = left[i]! + leftGain * sample;
      right[i] = right[i]! + rightGain * sample;
    }
  }

  private addRow(
    row: Row,
    out: readonly [Float32Array, Float32Array],
    from: Frames,
    frames: Frames,
  ): void {
    const { direct, room } = this.room ? roomShares(row.distanceM) : { direct: 1, room: 0 };
    const near = 0.5 * room * (1 + ROOM_WIDTH);
    const far = 0.5 * room * (1 - ROOM_WIDTH);
    const [left, right] = out;
    const [sendLeft, sendRight] = this.sends;
    for (let i = 0; i < frames; i++) {
      const l = row.left[i]!;
      const r = row.right[i]!;
      left[from + i] = left[from + i]! + direct * l;
      right[from + i] = right[from + i]! + direct * r;
      sendLeft[i] = sendLeft[i]! + near * l + far * r;
      sendRight[i] = sendRight[i]! + far * l + near * r;
    }
  }

  private wholeLength(sampleRate: Hertz): Frames {
    const tail = this.room ? Math.ceil(Room.length * sampleRate) : 0;
    const ends = this.channels.map((each) => each.start + this.maker.framesOf(specOf(each)));
    return ends.length === 0 ? 0 : Math.max(...ends) + tail;
  }
}

function specOf({ event, seed }: Channel): NoteSpec {
  const { sound, duration, curve } = event;
  return { sound, duration, curve, seed };
}

function channelOf(
  event: SoundEvent,
  plan: SoundPlan,
  sampleRate: Hertz,
  { gain, seat, row }: { readonly gain: Db; readonly seat: Place; readonly row: Row },
): Channel {
  const level = dbToGain((event.trim + gain) as Db);
  const [left, right] = panned(seat.pan);
  const late = Math.max(0, seat.distanceM - NEAREST_M) / SPEED_OF_SOUND_M_PER_S;
  const seed = seedFrom(`${event.playerId} ${soundName(event)}`, plan.seed);
  const scatter = onsetScatter(seed);
  return {
    event,
    seed,
    start: Math.round((event.onset + scatter + late) * sampleRate),
    left: level * left,
    right: level * right,
    row,
  };
}

/** Equal power: the two squares sum to one at every place. */
function panned(pan: Ratio): readonly [Ratio, Ratio] {
  const angle = (Math.PI / 4) * (1 + Math.min(1, Math.max(-1, pan)));
  return [Math.cos(angle), Math.sin(angle)];
}

function soundName({ sound }: SoundEvent): string {
  return sound.kind === "cymbal" ? sound.cymbal : `${sound.instrument} ${sound.sounding}`;
}

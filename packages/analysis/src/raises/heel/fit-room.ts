let room = new Float64Array(0);

/**
 * Room in which one fit works. It is kept from fit to fit, since making it costs more than most fits: what it holds is left from
 * before, and is gone with the next call.
 *
 * @param numbers - how many [-]
 * @returns as many, of any value [-]
 *
 * Source: ours
 */
export function fitRoom(numbers: number): Float64Array {
  if (room.length < numbers) room = new Float64Array(2 * numbers);
  return room.subarray(0, numbers);
}

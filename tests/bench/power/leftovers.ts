// What the driver of a browser still asks of one that is gone comes to nothing, and now and then nobody waits for that any more: no fault of
// the bench.

const GONE = /TargetCloseError|ConnectionClosedError|Session closed|Target closed|Connection closed|browser has disconnected|detached/i;

/** From now on; anything else that nobody waits for ends the bench, as ever. */
export function letGoOfLeftovers(): void {
  process.on('unhandledRejection', (why) => {
    if (!GONE.test(String(why))) throw why;
  });
}

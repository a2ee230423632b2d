// Installs the programs it is given, as far as they are missing. Started by ready.ts, which holds the lock: whoever had it
// before may have done the work, so this looks again.
import { aptGet } from './aptGet.ts';
import { missing, packagesOf, type Program } from './programs.ts';

const packages = packagesOf(missing(process.argv.slice(2) as Program[]));
if (packages.length > 0) {
  // Where some list cannot be refreshed, what is known may be enough: the installation decides.
  await aptGet(['update']);
  if (!(await aptGet(['install', '-y', ...packages]))) process.exitCode = 1;
}

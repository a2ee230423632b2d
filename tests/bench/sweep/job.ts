// One job of the bench in a process of its own, so that both cores work: method, family and runs in, a summary out.
import { runJob, type MethodName } from './jobs.ts';

const [method, family, runs] = process.argv.slice(2);
console.log(JSON.stringify(runJob(method as MethodName, family ?? '', Number(runs))));

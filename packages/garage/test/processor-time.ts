/** Milliseconds of processor time that this process has spent: what others do on the machine does not count. */
export function spent(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

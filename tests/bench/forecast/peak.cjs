// Loaded ahead of the command: says at its end how much memory it held at most, in megabytes, as the last line.
process.on("exit", () => {
  process.stderr.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
});

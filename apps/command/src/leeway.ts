process.stdout.write("stub\n");

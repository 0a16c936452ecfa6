process.exitCode = 2;
process.stderr.write("barwright: no command given\n");

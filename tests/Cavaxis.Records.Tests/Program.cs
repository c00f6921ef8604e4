using Cavaxis.Records.Tests.Faults;

// The program that is killed: told to write, it appends to a store and prints what was acknowledged. The tests start it.
return args is ["write", string store, string events, string seed] ? await Writer.RunAsync(store, events, seed) : 64;

Console.WriteLine("Benchmarks are added with what they measure.");

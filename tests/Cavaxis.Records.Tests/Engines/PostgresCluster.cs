using System.Diagnostics;
using System.Globalization;
using Npgsql;

namespace Cavaxis.Records.Tests.Engines;

/// <summary>
/// A PostgreSQL server of the tests' own, in a folder of its own, reached by a socket in that folder and no network. The shell around it
/// ends the server and removes the folder when the tests end, however they end.
/// </summary>
public sealed class PostgresCluster : IDisposable
{
    public const string Collection = "PostgreSQL";

    private readonly string home = Path.Combine(Path.GetTempPath(), "cvx-pg-" + Guid.NewGuid().ToString("N")[..10]);
    private readonly string programs = Programs();
    private Process server;
    private int schemas;

    public PostgresCluster()
    {
        Directory.CreateDirectory(home);
        Do("chmod", "700", home);
        if (IsRoot)
        {
            Do("chown", "postgres", home); // initdb refuses to work for root.
        }

        Do([.. AsServer, Path.Combine(programs, "initdb"), "-D", Data, "-U", "cavaxis", "-A", "trust", "-E", "UTF8", "--locale=C", "--no-instructions"]);
        server = Start();
    }

    private static bool IsRoot => Environment.UserName == "root";

    private static string[] AsServer => IsRoot ? ["runuser", "-u", "postgres", "--"] : [];

    private string Data => Path.Combine(home, "data");

    private string Admin => $"Host={home};Username=cavaxis;Database=postgres;Timeout=15";

    /// <summary>Connection string of an empty schema.</summary>
    public string NewSchema()
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"s{Interlocked.Increment(ref schemas)}");
        using NpgsqlConnection open = new(Admin);
        open.Open();
        using NpgsqlCommand command = open.CreateCommand();
        command.CommandText = "CREATE SCHEMA " + name;
        command.ExecuteNonQuery();
        return $"{Admin};Search Path={name};Application Name={name}";
    }

    /// <summary>Ends the server at once, without letting it write anything more (SIGQUIT), and starts it again.</summary>
    public void CrashAndRestart()
    {
        Do([.. AsServer, Path.Combine(programs, "pg_ctl"), "-D", Data, "-m", "immediate", "-W", "stop"]);
        server.WaitForExit();
        server = Start();
        NpgsqlConnection.ClearAllPools();
    }

    public void Dispose()
    {
        NpgsqlConnection.ClearAllPools();
        server.StandardInput.Close();
        server.WaitForExit(10_000);
        server.Dispose();
        Assert.True(SpinWait.SpinUntil(() => !Directory.Exists(home), 10_000), "the server's folder was not removed");
    }

    private Process Start()
    {
        // The shell waits for the end of its input, which comes with the end of the tests.
        const string Script = """
            "$1/postgres" -D "$2" -k "$3" -c listen_addresses= -c max_connections=120 -c log_min_messages=fatal 2>"$3/log" &
            server=$!
            ( cat >/dev/null
              if kill -INT $server 2>/dev/null; then
                while kill -0 $server 2>/dev/null; do sleep 0.1; done
                rm -rf "$3"
              fi ) <&3 &
            wait $server
            """;
        ProcessStartInfo start = new() { FileName = IsRoot ? "runuser" : "sh", RedirectStandardInput = true, WorkingDirectory = "/" };
        string[] shell = [.. (IsRoot ? ["-u", "postgres", "--", "sh"] : Array.Empty<string>()), "-c", "exec 3<&0; " + Script, "sh", programs, Data, home];
        Array.ForEach(shell, start.ArgumentList.Add);
        Process process = Process.Start(start)!;
        for (Stopwatch waited = Stopwatch.StartNew(); ;)
        {
            try
            {
                using NpgsqlConnection open = new(Admin + ";Pooling=false");
                open.Open();
                return process;
            }
            catch (NpgsqlException) when (waited.Elapsed < TimeSpan.FromSeconds(60) && !process.HasExited)
            {
                Thread.Sleep(50);
            }
        }
    }

    private static string Programs()
    {
        const string Installed = "/usr/lib/postgresql";
        return (Directory.Exists(Installed) ? Directory.GetDirectories(Installed) : [])
            .Select(static version => Path.Combine(version, "bin")).Where(static bin => File.Exists(Path.Combine(bin, "initdb"))).Order(StringComparer.Ordinal).LastOrDefault()
            ?? throw new InvalidOperationException("PostgreSQL is missing, so nothing is tested on it. Install Debian's package: apt-get install postgresql (scripts/prepare does).");
    }

    private static void Do(params string[] words)
    {
        ProcessStartInfo start = new() { FileName = words[0], RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = "/" };
        Array.ForEach(words[1..], start.ArgumentList.Add);
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{words[0]} ended with {process.ExitCode.ToString(CultureInfo.InvariantCulture)}: {errors.Result}");
        }
    }
}

using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;

namespace Cavaxis.Bench.Web;

/// <summary>Fifty invented people who sign in at once to a running workspace and then fetch pages, each with a browser's cookies and nothing kept.</summary>
internal static partial class CrowdFigures
{
    private const int People = 50;
    private const int PagesEach = 10;
    private const string Password = "plum lantern river seven";

    /// <summary>Registers them in the record of a data folder, which is to be empty.</summary>
    /// <param name="data">The folder.</param>
    public static void Register(string data)
    {
        using EventStore store = EventStore.OpenAsync(StoreAddress.Of(Path.Combine(data, "record.db")), TimeProvider.System).GetAwaiter().GetResult();
        PeopleRegister people = new(store, new Argon2PasswordHasher());
        Identifier programme = Identifier.Of("own");
        _ = people.FoundAsync(Identifier.Of("ada"), "Ada (invented)", Password, programme).GetAwaiter().GetResult();
        Person ada = people.FindAsync(Identifier.Of("ada")).GetAwaiter().GetResult()!;
        for (int i = 0; i < People; i++)
        {
            _ = people.RegisterAsync(ada, Identifier.Of(NameOf(i)), "Invented", Password, programme, Role.Lead).GetAwaiter().GetResult();
        }
    }

    /// <summary>Measures and prints.</summary>
    /// <param name="address">Address of the workspace.</param>
    public static async Task PrintAsync(Uri address)
    {
        Visitor[] all = [.. Enumerable.Range(0, People).Select(_ => new Visitor(address))];
        Stopwatch whole = Stopwatch.StartNew();
        double[] signIn = await Task.WhenAll(all.Select(static (v, i) => v.SignInAsync(NameOf(i), Password)));
        Told("sign in, all at once", signIn, whole.Elapsed);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"signed in: {all.Count(static v => v.IsIn)} of {People}"));
        string patient = await all[0].FirstPatientAsync();
        foreach ((string name, string path) in new[] { ("patients", string.Empty), ("running course", $"patient/{patient}/run"), ("case", $"patient/{patient}/know") })
        {
            whole.Restart();
            double[][] times = await Task.WhenAll(all.Select(v => v.FetchAsync(path, PagesEach)));
            Told($"{name}, {People} people fetch it {PagesEach} times at once", [.. times.SelectMany(static t => t)], whole.Elapsed);
        }

        foreach (Visitor one in all)
        {
            one.Dispose();
        }
    }

    private static string NameOf(int number) => string.Create(CultureInfo.InvariantCulture, $"lead{number}");

    private static void Told(string what, double[] ms, TimeSpan whole)
    {
        double[] ascending = [.. ms.Order()];
        double At(double share) => ascending[Math.Min(ascending.Length - 1, (int)Math.Ceiling(share * ascending.Length) - 1)];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{what}: median {At(0.5):F0} ms, 95th percentile {At(0.95):F0} ms, longest {At(1):F0} ms; all {ms.Length} in {whole.TotalSeconds:F1} s"));
    }

    private sealed partial class Visitor : IDisposable
    {
        private readonly HttpClient client;

        // The handler goes with the client.
        public Visitor(Uri address) => client = new HttpClient(new SocketsHttpHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(address.ToString().TrimEnd('/') + "/"), Timeout = TimeSpan.FromMinutes(3) };

        public bool IsIn { get; private set; }

        public void Dispose() => client.Dispose();

        public async Task<double> SignInAsync(string name, string password)
        {
            long start = Stopwatch.GetTimestamp();
            string form = await client.GetStringAsync(new Uri("sign-in", UriKind.Relative));
            Dictionary<string, string> fields = Hidden().Matches(form).ToDictionary(static m => m.Groups[1].Value, static m => WebUtility.HtmlDecode(m.Groups[2].Value));
            (fields["name"], fields["password"]) = (name, password);
            using FormUrlEncodedContent filled = new(fields);
            using HttpResponseMessage answer = await client.PostAsync(new Uri("sign-in", UriKind.Relative), filled);
            IsIn = answer.IsSuccessStatusCode && !answer.RequestMessage!.RequestUri!.AbsolutePath.EndsWith("/sign-in", StringComparison.Ordinal);
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        public async Task<string> FirstPatientAsync() => Patient().Match(await Page(string.Empty)).Groups[1].Value;

        public async Task<double[]> FetchAsync(string path, int times)
        {
            double[] ms = new double[times];
            for (int i = 0; i < times; i++)
            {
                long start = Stopwatch.GetTimestamp();
                _ = await Page(path);
                ms[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            }

            return ms;
        }

        private async Task<string> Page(string path)
        {
            using HttpRequestMessage request = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
            request.Headers.Add("Accept", "text/html");
            using HttpResponseMessage answer = await client.SendAsync(request);
            answer.EnsureSuccessStatusCode();
            return await answer.Content.ReadAsStringAsync();
        }

        [GeneratedRegex("""<input[^>]*type="hidden"[^>]*name="([^"]+)"[^>]*value="([^"]*)""", RegexOptions.IgnoreCase)]
        private static partial Regex Hidden();

        [GeneratedRegex("""patient/([0-9a-f]{32}|[0-9a-zA-Z-]+)/""")]
        private static partial Regex Patient();
    }
}

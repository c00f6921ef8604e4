using System.IO.Compression;
using Firely.Fhir.Validation;
using Hl7.Fhir.Specification.Source;
using Hl7.Fhir.Specification.Terminology;

namespace Cavaxis.Bedside.Tests.Fhir;

/// <summary>The definitions of FHIR R4 as HL7 published them, from the package that carries them; read on this machine alone.</summary>
public static class SpecificationPackage
{
    private static readonly Lazy<CachedResolver> Definitions = new(static () => new CachedResolver(new ZipSource(Path)));

    private static readonly Lazy<Validator> Checker = new(static () => new Validator(Definitions.Value, new LocalTerminologyService(Definitions.Value), null, null, null));

    public static Validator Validator => Checker.Value;

    private static string Path => System.IO.Path.Combine(AppContext.BaseDirectory, "specification.zip");

    /// <summary>Text of one file of the package.</summary>
    public static string TextOf(string name)
    {
        using ZipArchive zip = ZipFile.OpenRead(Path);
        using StreamReader reader = new(zip.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }
}

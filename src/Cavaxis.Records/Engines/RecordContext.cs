using Cavaxis.Records.Chain;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Engines;

/// <summary>The tables of a store for Entity Framework. Made for one piece of work and thrown away.</summary>
internal sealed class RecordContext(DbContextOptions<RecordContext> options) : DbContext(options)
{
    /// <summary>The events.</summary>
    public DbSet<EventRow> Events => Set<EventRow>();

    /// <summary>Password hashes.</summary>
    public DbSet<CredentialRow> Credentials => Set<CredentialRow>();

    /// <summary>Who is signed in.</summary>
    public DbSet<SessionRow> Sessions => Set<SessionRow>();

    /// <summary>Failures to sign in.</summary>
    public DbSet<AttemptRow> Attempts => Set<AttemptRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ForEvents(modelBuilder);
        modelBuilder.Entity<CredentialRow>(static row =>
        {
            row.ToTable("credential").HasKey(static c => c.Person);
            row.Property(static c => c.Person).HasColumnName("person");
            row.Property(static c => c.Hash).HasColumnName("hash");
        });
        modelBuilder.Entity<SessionRow>(static row =>
        {
            row.ToTable("session").HasKey(static s => s.TokenHash);
            row.Property(static s => s.TokenHash).HasColumnName("token_hash");
            row.Property(static s => s.Person).HasColumnName("person");
            row.Property(static s => s.BegunUs).HasColumnName("begun_us");
            row.Property(static s => s.SeenUs).HasColumnName("seen_us");
        });
        modelBuilder.Entity<AttemptRow>(static row =>
        {
            row.ToTable("attempt").HasKey(static a => a.NameHash);
            row.Property(static a => a.NameHash).HasColumnName("name_hash");
            row.Property(static a => a.Failures).HasColumnName("failures");
            row.Property(static a => a.FirstUs).HasColumnName("first_us");
            row.Property(static a => a.LockedUntilUs).HasColumnName("locked_until_us");
        });
    }

    private static void ForEvents(ModelBuilder modelBuilder) => modelBuilder.Entity<EventRow>(static row =>
    {
        row.ToTable("event");
        row.HasKey(static e => e.Position);
        row.Property(static e => e.Position).HasColumnName("position").ValueGeneratedNever();
        row.Property(static e => e.Stream).HasColumnName("stream");
        row.Property(static e => e.Sequence).HasColumnName("sequence");
        row.Property(static e => e.Kind).HasColumnName("kind");
        row.Property(static e => e.Payload).HasColumnName("payload");
        row.Property(static e => e.Who).HasColumnName("who");
        row.Property(static e => e.OccurredUs).HasColumnName("occurred_us");
        row.Property(static e => e.RecordedUs).HasColumnName("recorded_us");
        row.Property(static e => e.Corrects).HasColumnName("corrects");
        row.Property(static e => e.PreviousHash).HasColumnName("previous_hash");
        row.Property(static e => e.Hash).HasColumnName("hash");
        row.Ignore(static e => e.HoldsTogether);
        row.Ignore(static e => e.Head);
        row.HasIndex(static e => new { e.Stream, e.Sequence }).IsUnique();
    });
}

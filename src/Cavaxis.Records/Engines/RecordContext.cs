using Cavaxis.Records.Chain;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Engines;

/// <summary>The tables of a store for Entity Framework. Made for one piece of work and thrown away.</summary>
internal sealed class RecordContext(DbContextOptions<RecordContext> options) : DbContext(options)
{
    /// <summary>The events.</summary>
    public DbSet<EventRow> Events => Set<EventRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder) => modelBuilder.Entity<EventRow>(static row =>
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
        row.Ignore(static e => e.IsWellFormed);
        row.Ignore(static e => e.AsEvent);
        row.Ignore(static e => e.Head);
        row.HasIndex(static e => new { e.Stream, e.Sequence }).IsUnique();
    });
}

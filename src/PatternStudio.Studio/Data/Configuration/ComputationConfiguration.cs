using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class ComputationConfiguration : IEntityTypeConfiguration<Computation>
{
    public void Configure(EntityTypeBuilder<Computation> computation)
    {
        computation.ToTable("Computations");
        computation.HasKey(it => new { it.DesignId, it.Version });
        computation.Property(it => it.EngineVersion).HasMaxLength(40);
        computation.HasOne<DesignVersion>().WithOne()
            .HasForeignKey<Computation>(it => new { it.DesignId, it.Version }).OnDelete(DeleteBehavior.Cascade);
    }
}

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class DesignVersionConfiguration : IEntityTypeConfiguration<DesignVersion>
{
    public void Configure(EntityTypeBuilder<DesignVersion> version)
    {
        version.ToTable("Versions");
        version.HasKey(it => new { it.DesignId, it.Number });
        version.Property(it => it.Name).HasMaxLength(DesignVersion.NameLength).HasDefaultValue("");
        // Who saved it stays on record when the account is gone: no foreign key.
        version.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Restrict);
    }
}
